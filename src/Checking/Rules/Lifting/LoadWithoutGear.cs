using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Lifting;

/// <summary>A load is too heavy for one person, and nobody says what it hangs in or who carries it.</summary>
public sealed class LoadWithoutGear : ISheetRule
{
    public static RuleInfo Info { get; } = new("load-without-gear", "Lifting", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        var byHand = library.Workshop.Limits.LiftByHand;
        foreach (var load in machine.Loads)
        {
            // light enough for one, or without a mass: the reader says that
            if (load.Mass is not { Value: { Unit.Kind: "mass" } mass } || mass.CompareTo(byHand) <= 0)
                continue;
            // said
            if (load.Gear is not null || load.ByHand is not null)
                continue;
            findings.Add(
                Info,
                load.Id.At,
                $"{Say.Capital(load.Id.Value)} is {Measures.InBoth(mass)}, more than the {byHand} that one person lifts, and nobody says what it hangs in.",
                "Whoever comes to it takes the sling that is at hand, or lifts it with his back.",
                "Write what it hangs in, `gear: sling-2leg`, or who carries it, `by-hand: two persons`.");
        }
    }
}
