using System.Collections.Immutable;
using System.Globalization;
using Witnessmark.Language.Model;

namespace Witnessmark.Records.Sheets;

/// <summary>The turns of a loop: a step in it is done once for each, and what it wants written down has a place for each.</summary>
/// <param name="Names">CL, CR, …; the places of the kind where the loop lists none.</param>
/// <param name="MayEnd">Whether the loop ends as soon as its <c>until</c> holds: later turns stay empty then.</param>
/// <param name="OfSection">Whether several steps are repeated, not one.</param>
public sealed record LoopTurns(ImmutableArray<string> Names, bool MayEnd, bool OfSection)
{
    /// <summary>The nearest loop around a step; null when it is done once, or pass by pass.</summary>
    internal static LoopTurns? Of(StepInPlace place, StepNames names)
    {
        if (place.Step.Find(FactWord.ForEach) is { } own)
            return Of(own, until: null, names, ofSection: false);
        var around = place.Section.Facts.Find(FactWord.ForEach) is not null ? place.Section.Facts : place.Part.Facts;
        return around.Find(FactWord.ForEach) is { } loop ? Of(loop, around.Find(FactWord.Until), names, ofSection: true) : null;
    }

    private static LoopTurns? Of(Fact fact, Fact? until, StepNames names, bool ofSection)
    {
        if (fact.Value is not Loop { OfGroup: null } loop)
            return null;
        ImmutableArray<string> turns = loop.In.IsEmpty
            ? [.. names.Root.Machine?.Places.FirstOrDefault(p => p.Name.Value == names.Filled(loop.Kind.Value))?.Names.Select(n => n.Value) ?? []]
            : [.. loop.In.Select(n => names.Filled(n.Value))];
        return turns.IsEmpty ? null : new LoopTurns(turns, until is not null, ofSection);
    }

    /// <summary>The ask with a place for each turn; as it is where it is asked once whatever is repeated: a tool, initials, a hold point.</summary>
    public Ask Asked(Ask ask) => ask switch
    {
        ReadingAsk { Pieces: [""] } reading => reading with { Pieces = Names, Turns = this },
        LookAsk or ChoiceAsk { Ends: false } => ask with { Turns = this },
        // one step over six wheel ends counts to the end; six rounds of several steps count in each
        CountAsk when OfSection => ask with { Turns = this },
        _ => ask,
    };

    /// <summary><c>CL to RR</c></summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Names[0]} to {Names[^1]}");
}
