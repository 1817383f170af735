using System.Collections.Immutable;
using System.Globalization;
using Witnessmark.Checking.Wording;
using Witnessmark.Engineering.Lifting;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Lifting;

/// <summary>People are to carry more than the house lets each of them lift.</summary>
public sealed class ByHandTooHeavy : ISheetRule
{
    private static readonly ImmutableArray<string> Numbers = ["one", "two", "three", "four", "five", "six"];

    public static RuleInfo Info { get; } = new("by-hand-too-heavy", "Lifting", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        var limit = library.Workshop.Limits.LiftByHand;
        foreach (var load in machine.Loads)
        {
            // nobody carries it, or no mass is written
            if (load is not { ByHand: { } byHand, Mass: { Value.Unit.Kind: "mass" } mass })
                continue;
            // each has his share
            if (HandLift.Of(mass.Value, People(byHand.Value), limit) is not { Fits: false } lift)
                continue;
            findings.Add(new Finding(
                Info,
                byHand.At,
                $"{Say.Capital(load.Id.Value)} is {Measures.InBoth(mass.Value)} and is carried by {byHand.Value}; the house lets each lift {Measures.InBoth(limit)}.",
                "The limit holds close to the body and without turning. Bent over, at arm's reach, a back or a hand gives way at less.",
                "Lift it with the crane: write `gear:` and `radius:` here. Or name more people, where more can get their hands on it.")
            {
                Worked = [$"mass / (limit × people): {lift.Index.Line}"],
            });
        }
    }

    /// <summary>The number that it begins with; one where none is said.</summary>
    private static int People(string words)
    {
        var first = words.Words().Next().ToString().ToLowerInvariant();
        return int.TryParse(first, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : Math.Max(Numbers.IndexOf(first) + 1, 1);
    }
}
