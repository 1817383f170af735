using Witnessmark.Engineering;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Fasteners;

/// <summary>The last pass does not leave the bolts at their torque.</summary>
public sealed class LastPassNotFull : ISheetRule
{
    public static RuleInfo Info { get; } = new("last-pass-not-full", "Fasteners", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var list in PassList.Of(machine, library))
        {
            var last = list.Passes[^1];
            // it ends at the torque
            if (last.Value.Share == 1m)
                continue;
            findings.Add(
                Info,
                last.At,
                $"The last pass of {list.Whose} is {Figures.Percent(last.Value.Share)} of the torque.",
                "Every pass is inked, the sheet says torqued, and no bolt has its torque.",
                "Let the last pass be `100 %`, and better one more round: `100 % circular`.");
        }
    }
}
