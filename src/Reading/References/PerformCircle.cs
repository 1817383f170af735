using System.Collections.Immutable;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Reading.Faults;

namespace Witnessmark.Reading.References;

/// <summary>Follows what performs what: nothing comes round to itself, and the steps behind one step fit on paper.</summary>
internal static class PerformCircle
{
    /// <summary>A performed step has two digits behind the point: 16.99.</summary>
    private const int MostInner = 99;

    public static void Check(Library library, FindingList findings)
    {
        var known = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var procedure in library.Procedures)
            foreach (var part in procedure.Parts)
                Count(procedure, part, [], new Sight(library, known, findings));
    }

    /// <returns>Steps of the part with all that it performs.</returns>
    private static int Count(Procedure procedure, ProcedurePart part, ImmutableList<string> within, Sight sight)
    {
        var name = $"{procedure.Id.Value}{(part.Name is { } own ? $" part {own.Value}" : "")}";
        if (sight.Known.TryGetValue(name, out var counted))
            return counted;
        var sum = 0;
        foreach (var section in part.Sections)
            foreach (var step in section.Steps)
                sum += 1 + Performed(step);
        return sight.Known[name] = sum;

        int Performed(Step step)
        {
            var inner = 0;
            foreach (var fact in step.Facts)
                if (fact is { Word: FactWord.Perform, Value: PerformValue perform })
                    inner += Behind(procedure, step, perform, within.Add(name), sight);
            return inner;
        }
    }

    private static int Behind(Procedure procedure, Step step, PerformValue perform, ImmutableList<string> within, Sight sight)
    {
        var callee = perform.Procedure.Value == "this" ? procedure : sight.Library.Procedure(perform.Procedure.Value);
        var inner = 0;
        foreach (var part in callee?.Parts.Where(p => perform.Part is null || p.Name?.Value == perform.Part.Value.Value) ?? [])
        {
            var name = $"{callee!.Id.Value}{(part.Name is { } own ? $" part {own.Value}" : "")}";
            if (within.IndexOf(name) is >= 0 and var from)
                sight.Findings.Add(Circle(perform, [.. within.Skip(from), name]));
            else
                inner += Count(callee, part, within, sight);
        }
        if (inner <= MostInner)
            return inner;
        // said here, not again by all that perform this
        sight.Findings.Add(TooMany(procedure, step, perform));
        return 0;
    }

    private static Finding Circle(PerformValue perform, ImmutableArray<string> way) => new(
        StepFaults.PerformCircle,
        perform.Procedure.At,
        $"What is performed here comes round to itself: {string.Join(" → ", way)}.",
        "Whoever follows it never gets to the end, and no sheet can print it.",
        "Take one of these steps out of the circle. To do steps once more, name them with `again-from`.");

    private static Finding TooMany(Procedure procedure, Step step, PerformValue perform) => new(
        StepFaults.TooManySteps,
        perform.Procedure.At,
        $"Behind step {step.Number} of {procedure.Id.Value} come more than {MostInner} performed steps.",
        "The number of a performed step has two digits behind the point; more do not fit on the sheet and in no head.",
        "Perform it in several steps, part by part, or make it a sheet of its own.");

    private sealed record Sight(Library Library, Dictionary<string, int> Known, FindingList Findings);
}
