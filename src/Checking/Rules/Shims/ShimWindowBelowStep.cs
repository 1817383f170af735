using Witnessmark.Engineering.Shims;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Shims;

/// <summary>The window of the play is narrower than the finest step that the sizes in stock allow.</summary>
public sealed class ShimWindowBelowStep : ISheetRule
{
    public static RuleInfo Info { get; } = new("shim-window-below-step", "Shims", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var shims in machine.Shims)
        {
            // too little is known, or some pack always lies in the window
            if (shims.Play is not { } play || ShimSetting.Of(shims) is not { WindowTakesAStep: false, Stock.Step: var step })
                continue;
            var width = play.Value.High!.Value.Value is var high ? high with { Number = high.Number - play.Value.Low!.Value.Value.In(high.Unit).Number } : default;
            findings.Add(
                Info,
                play.At,
                $"The play of the {shims.Id.Spoken()} has a window of {Measures.InBoth(width)}, and packs of the sizes in stock lie at least {Measures.InBoth(step)} apart.",
                "A play between two packs cannot be set: one is too tight, the next too loose, and the machine stands until a shim is found or somebody lives with it.",
                "Put a finer size in stock and add it to `sizes`, or look up the window again.",
                new FurtherPlace(shims.Sizes[0].At, $"the sizes: {Say.And(shims.Sizes.Select(s => $"{s.Value}"))}"));
        }
    }
}
