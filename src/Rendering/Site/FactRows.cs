using System.Collections.Immutable;
using Scriban.Runtime;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Rendering.Site;

/// <summary>Facts as rows of label and words, with the numbers that the data sheet holds for them.</summary>
internal sealed class FactRows(Scope scope, Library library)
{
    /// <summary>The words that messages are written in.</summary>
    public SignalScheme Signals => library.Workshop.SignalScheme;

    public ScriptArray Of(ImmutableArray<Fact> facts, StepInPlace? step) => new(facts.Where(f => Shown(f.Word)).Select(f => new ScriptObject
    {
        ["label"] = DeclaredName.Spoken(f.Word.Spelled()),
        ["value"] = DeclaredName.SpokenIn(f.Text.Value),
        ["more"] = new ScriptArray(More(f).Select(m => (object)m)),
        ["link"] = f.Value is PerformValue perform && library.Procedure(perform.Procedure.Value) is { } callee ? SitePages.PathOf(callee) : "",
        ["inherited"] = step is null,
    }));

    // the contract stands in a box of its own
    private static bool Shown(FactWord word) => word is not (FactWord.StartsWith or FactWord.EndsWith or FactWord.Was);

    private IEnumerable<string> More(Fact fact) => fact.Value switch
    {
        NameList names when fact.Word is FactWord.Measure or FactWord.Inspect => names.Names.SelectMany(n => Reading(scope.Reading(n.Value))),
        NameList names when fact.Word is FactWord.WorkOut => names.Names.SelectMany(n => Value(scope.Value(n.Value))),
        NameList names when fact.Word is FactWord.Call => names.Names.SelectMany(n => Call(n.Value)),
        SpokenWords spoken when fact.Word is FactWord.Call => Call(spoken.Text.Value),
        Amounts amounts when fact.Word is FactWord.Tighten => amounts.All.SelectMany(a => Torque(scope.Fasteners(a.Thing.Value))),
        PerformValue perform => perform.Arguments.SelectMany(a => Torque(scope.Fasteners(a.Value.Value))),
        _ => [],
    };

    private static IEnumerable<string> Reading(ReadingItem? reading)
    {
        if (reading is null)
            yield break;
        if (reading.LookFor is { } look)
            yield return $"look for: {look.Value}";
        foreach (var band in reading.Bands)
            yield return $"{DeclaredName.SpokenIn(band.Name.Value)}: {Measures.InBoth(band.Range.Value, reading.JudgesDifference)}";
        if (reading.Outside is { } outside)
            yield return $"outside: {outside.Value}";
    }

    private IEnumerable<string> Value(WorkedValue? value)
    {
        if (value is null)
            yield break;
        if (value.Formula is { } formula)
            yield return DeclaredName.SpokenIn(formula.Value);
        var accept = value.Accept?.Value ?? (value.AcceptAsClearanceOf is { } stack ? scope.Stack(stack.Value)?.Clearance?.Value : null);
        if (accept is { } range)
            yield return $"accept: {Measures.InBoth(range)}";
        if (value.Outside is { } outside)
            yield return $"outside: {outside.Value}";
    }

    private IEnumerable<string> Call(string name) => scope.Call(name) is { } call ? [$"call: {call.Call}", $"answer: {call.Answer}"] : [];

    private static IEnumerable<string> Torque(FastenerGroup? group)
    {
        if (group?.Torque is not { } torque)
            yield break;
        yield return $"{group.Count?.Value} × {group.Thread?.Value} {group.Strength}, {group.Condition?.Value}: {Measures.InBoth(torque.Value)}";
    }
}
