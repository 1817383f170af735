using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Shims;

/// <summary>The play that is aimed at is none that is accepted.</summary>
public sealed class ShimTargetOutside : ISheetRule
{
    public static RuleInfo Info { get; } = new("shim-target-outside", "Shims", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var shims in machine.Shims)
        {
            // nothing to compare, or the target is a play that is accepted
            if (shims is not { Target: { } target, Play: { } play } || play.Value.Contains(target.Value))
                continue;
            findings.Add(
                Info,
                target.At,
                $"The {shims.Id.Spoken()} aim at a play of {Measures.InBoth(target.Value)}; {Measures.InBoth(play.Value)} is accepted.",
                "Every pack is chosen as near to the target as it can be, so each would lie at the edge of what is accepted.",
                "Look up both numbers again. Without a target the middle of the window is aimed at.",
                new FurtherPlace(play.At, $"the play: {play.Value}"));
        }
    }
}
