using Witnessmark.Engineering;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Fasteners;

/// <summary>A pass pulls no harder than the one before it.</summary>
public sealed class PassesNotRising : ISheetRule
{
    public static RuleInfo Info { get; } = new("passes-not-rising", "Fasteners", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var list in PassList.Of(machine, library))
            for (var i = 1; i < list.Passes.Length; i++)
            {
                var (before, pass) = (list.Passes[i - 1].Value, list.Passes[i].Value);
                // it pulls harder; or it goes round once more at the same torque, to try every bolt
                if (pass.Share > before.Share || (pass.Circular && pass.Share == before.Share))
                    continue;
                findings.Add(
                    Info,
                    list.Passes[i].At,
                    $"Pass {i + 1} of {list.Whose} is {Figures.Percent(pass.Share)} after {Figures.Percent(before.Share)}: it does not pull harder.",
                    "The wrench clicks before a bolt turns. The pass is inked and signed and has done nothing, and the joint is pulled shut in fewer steps than it looks.",
                    "Let the shares rise to 100 %, as `30 %, 60 %, 100 %, 100 % circular`.",
                    new FurtherPlace(list.Passes[i - 1].At, $"the pass before: {Figures.Percent(before.Share)}"));
            }
    }
}
