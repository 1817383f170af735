using Witnessmark.Engineering;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Fasteners;

/// <summary>The first pass pulls so hard that the joint cannot come together level.</summary>
public sealed class FirstPassTooHigh : ISheetRule
{
    /// <summary>Of the full torque. Practice for pressure flanges: 20 to 30 % first, and a little more is borne.</summary>
    internal const decimal Highest = 0.40m;

    public static RuleInfo Info { get; } = new("first-pass-too-high", "Fasteners", Severity.Query);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var list in PassList.Of(machine, library))
        {
            // one pass alone is meant so: plugs and single bolts need no more
            if (list.Passes.Length < 2)
                continue;
            var first = list.Passes[0];
            // low enough
            if (first.Value.Share <= Highest)
                continue;
            findings.Add(
                Info,
                first.At,
                $"The first pass of {list.Whose} is {Figures.Percent(first.Value.Share)} of the torque; {Figures.Percent(Highest)} is the most that leaves room to come together level.",
                "The first bolt pulls its side down and the other side gapes. Later passes seldom bring a ring or cover back that stands crooked.",
                "Begin lower, as `30 %, 60 %, 100 %, 100 % circular`.");
        }
    }
}
