using Witnessmark.Engineering.Shims;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Shims;

/// <summary>A play that can be measured with the as-built pack in, and no pack of the sizes in stock sets it right.</summary>
public sealed class ShimsOutOfReach : ISheetRule
{
    public static RuleInfo Info { get; } = new("shims-out-of-reach", "Shims", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var shims in machine.Shims)
        {
            // nothing to go through
            if (shims is not { AsBuilt: { } built, Plausible: { } plausible, ThickerIs: not null } || ShimSetting.Of(shims) is not { } setting)
                continue;
            // a window below the step, or one that misses its target, is a fault of its own
            if (!setting.WindowTakesAStep || !setting.Play.Contains(setting.Target))
                continue;
            var missed = ShimTable.Of(setting, built.Value, plausible.Value).Where(r => !r.Stays && r.Choice.Pack is null).ToList();
            // every play has its pack
            if (missed is not [var first, ..])
                continue;
            findings.Add(new Finding(
                Info,
                plausible.At,
                $"With the as-built {shims.Id.Spoken()} of {Measures.InBoth(built.Value)} in, no pack answers a play of {Say.Some(missed.Select(Plays))}.",
                "The mechanic who measures it has the hub off and no shims that set it: the bearing runs outside its window, or the machine stands.",
                $"Add a size to `sizes`, allow more pieces with `most` (now {Say.Number(setting.Stock.Most)}), or narrow `plausible` to what a sound bearing can show.")
            {
                Further = [new FurtherPlace(shims.Sizes[0].At, $"the sizes: {Say.And(shims.Sizes.Select(s => $"{s.Value}"))}")],
                Worked = [$"for {first.From}: {first.Choice.Wanted.Line}", first.Choice.Refusal!.Says],
            });
        }
    }

    private static string Plays(ShimRow row) => row.From == row.To ? $"{row.From}" : $"{row.From.NumberText} to {row.To}";
}
