using Witnessmark.Engineering;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Torque;

/// <summary>A torque brings its bolts above the house's share of proof load.</summary>
public sealed class TorqueAboveWindow : ISheetRule
{
    public static RuleInfo Info { get; } = new("torque-above-window", "Torque", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var torque in TorqueCase.Of(machine, library))
        {
            // its upper end is inside
            if (!torque.GoesAbove)
                continue;
            // a slip of the unit explains it: the cause is told once
            if (torque.Slip is not null)
                continue;
            var reached = Figures.Percent(torque.ShareOfProof(torque.Torque.Value.High), 1);
            var limit = Figures.Percent(torque.Limits.TorqueWindow.High);
            findings.Add(new Finding(
                Info,
                torque.Torque.At,
                $"{Measures.InBoth(torque.Torque.Value)} brings {torque.Group.Id.Value} up to {reached} of the torque at proof load; the house allows {limit}.",
                "Friction scatters by a quarter. A bolt aimed this high may be pulled past proof: it stays long, clamps less, and breaks later.",
                torque.PutRight)
            {
                Worked = [.. torque.Worked, $"most: {torque.Window.High.Line}"],
            });
        }
    }
}
