using System.Collections.Immutable;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Reading.Faults;

namespace Witnessmark.Reading.References;

/// <summary>Holds names against the book, and says what was probably meant.</summary>
internal sealed class NameCheck(NameBook book, Func<string, NameKind?> parameter, FindingList findings)
{
    private const string Why = "A name that is declared nowhere has no count, no torque and no value: nothing about it can be checked.";

    public NameBook Book => book;

    public FindingList Findings => findings;

    /// <summary>The name must stand for one of these kinds; <paramref name="takes"/> is who asks: <c>tighten</c>.</summary>
    /// <returns>What it stands for; empty when that is not known.</returns>
    public ImmutableArray<Declared> Must(Located<string> name, NameKind kinds, string takes)
    {
        if (name.Value.StartsWith('{'))
        {
            Parameter(name, kinds, takes);
            return [];
        }
        var found = book.Find(name.Value);
        var right = Among(found, kinds);
        if (right.IsEmpty)
            findings.Add(found.IsEmpty ? Unknown(name, kinds) : OtherKind(name, found, kinds, takes));
        return right;
    }

    private static ImmutableArray<Declared> Among(ImmutableArray<Declared> found, NameKind kinds)
    {
        foreach (var declared in found)
            if ((declared.Kind & kinds) == 0)
                return found.RemoveAll(d => (d.Kind & kinds) == 0);
        return found;
    }

    /// <summary>A parameter must be one that the common part takes, of the right kind.</summary>
    private void Parameter(Located<string> name, NameKind kinds, string takes)
    {
        if (parameter(name.Value) is not { } kind)
            findings.Add(
                StepFaults.ParameterUnknown,
                name.At,
                $"`{name.Value}` is not given to this procedure.",
                "On the sheet the braces are replaced by what the performing step gives; with nothing given, a gap would be printed.",
                $"Only what stands under `takes:` in the front matter can stand in braces. Add `{name.Value.Trim('{', '}')}` there, or write the name itself.");
        else if ((kind & kinds) == 0)
            findings.Add(
                StepFaults.ParameterUnknown,
                name.At,
                $"`{name.Value}` is {kind.InWords()}; `{takes}` takes {kinds.InWords()}.",
                Why,
                "Give the parameter that was meant, or change its kind under `takes:`.");
    }

    private Finding Unknown(Located<string> name, NameKind kinds)
    {
        var near = Near(name.Value, book.Of(kinds)) ?? Near(name.Value, book.Of((NameKind)int.MaxValue));
        return new Finding(
            StepFaults.NameUnknown,
            name.At,
            $"`{Say.Short(name.Value)}` is not declared.",
            Why,
            near is null ? $"Declare it once, as {kinds.InWords()}, or use a name that is declared." : $"Did you mean {Quote(near)}?")
        {
            Further = Place(near),
            Correction = Correction.Respelled(name, book.Of(kinds).Select(d => d.Name)),
        };
    }

    private Finding OtherKind(Located<string> name, ImmutableArray<Declared> found, NameKind kinds, string takes)
    {
        var near = Near(name.Value, book.Of(kinds)) ?? book.Of(kinds).FirstOrDefault(d => d.Name.StartsWith(name.Value + "-", StringComparison.Ordinal));
        return new Finding(
            StepFaults.NameUnknown,
            name.At,
            $"`{name.Value}` is {found.Aggregate(NameKind.None, (all, d) => all | d.Kind).InWords()}; `{takes}` takes {kinds.InWords()}.",
            "The verb would do nothing, or something else than was meant.",
            near is null ? $"Name {kinds.InWords()}, or use the verb that fits." : $"Did you mean {Quote(near)}?")
        {
            Further = [.. Place(found[0]), .. Place(near)],
        };
    }

    private static Declared? Near(string written, IEnumerable<Declared> among)
    {
        var all = among.ToList();
        return NearMiss.Of(written, all.Select(d => d.Name)) is { } name ? all.Find(d => d.Name == name) : null;
    }

    private static string Quote(Declared declared) =>
        declared.At is { } at ? $"`{declared.Name}` ({at.Source.Path}:{Say.Number(at.Start.Line)})" : $"`{declared.Name}`";

    private static ImmutableArray<FurtherPlace> Place(Declared? declared) =>
        declared?.At is { } at ? [new FurtherPlace(at, $"`{declared.Name}` is {declared.Kind.InWords()}")] : [];
}
