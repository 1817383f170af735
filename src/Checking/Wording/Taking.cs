using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Checking.Wording;

/// <summary>Where readings, looks, values and tests are taken.</summary>
internal static class Taking
{
    /// <summary>What a fact takes, by name.</summary>
    public static IEnumerable<Located<string>> Taken(this Fact fact) =>
        fact is { Word: FactWord.Measure or FactWord.Inspect or FactWord.Test or FactWord.WorkOut, Value: NameList names } ? names.Names : [];

    /// <summary>All that is taken up to a step and in it, also by what is performed; a test takes its readings along.</summary>
    public static HashSet<string> TakenUpTo(this Scope scope, Step step)
    {
        var facts = scope.Procedure.Steps.Where(s => s.Number <= step.Number).SelectMany(s => s.Facts).ToList();
        var performed = facts.Select(f => f.Value).OfType<PerformValue>()
            .Select(p => scope.Library.Procedure(p.Procedure.Value)).OfType<Procedure>()
            .SelectMany(p => p.Steps).SelectMany(s => s.Facts);
        var taken = facts.Concat(performed).SelectMany(Taken).Select(n => n.Value).ToHashSet(StringComparer.Ordinal);
        return [.. taken, .. taken.Select(scope.Test).OfType<TestItem>().SelectMany(t => t.Readings).Select(r => r.Value)];
    }

    /// <summary>Whether the contract of a part brings it along, or whoever performs the procedure has it taken.</summary>
    public static bool Brought(this Scope scope, string name) =>
        Conditions.At(scope.Procedure, FactWord.StartsWith).Any(c => c.Thing.Value == name)
        || scope.Callers().SelectMany(c => c.Uses.Select(u => scope.Library.Procedure(u.Procedure.Value)).OfType<Procedure>().Append(c))
            .Any(p => p.Id.Value != scope.Procedure.Id.Value && p.Steps.SelectMany(s => s.Facts).SelectMany(Taken).Any(t => t.Value == name));

    /// <summary>Procedures and jobs that perform this one.</summary>
    public static IEnumerable<Procedure> Callers(this Scope scope) =>
        scope.Library.Procedures.Where(p => p.Uses.Any(u => u.Procedure.Value == scope.Procedure.Id.Value));

    /// <summary>The verb by which a name is taken: measure, inspect, work-out, test; null when it is nothing to be taken.</summary>
    public static FactWord? TakenBy(this Scope scope, string name)
    {
        if (scope.Reading(name) is { } reading)
            return reading.IsLook ? FactWord.Inspect : FactWord.Measure;
        if (scope.Value(name) is not null)
            return FactWord.WorkOut;
        return scope.Test(name) is null ? null : FactWord.Test;
    }
}
