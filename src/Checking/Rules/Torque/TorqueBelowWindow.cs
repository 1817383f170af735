using Witnessmark.Engineering;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Torque;

/// <summary>A torque leaves its bolts below the house's share of proof load.</summary>
public sealed class TorqueBelowWindow : ISheetRule
{
    public static RuleInfo Info { get; } = new("torque-below-window", "Torque", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var torque in TorqueCase.Of(machine, library))
        {
            // its lower end is inside
            if (!torque.GoesBelow)
                continue;
            // a slip of the unit explains it, or it also goes above: the cause is told once
            if (torque.Slip is not null || torque.GoesAbove)
                continue;
            var reached = Figures.Percent(torque.ShareOfProof(torque.Torque.Value.Low), 1);
            var limit = Figures.Percent(torque.Limits.TorqueWindow.Low);
            findings.Add(new Finding(
                Info,
                torque.Torque.At,
                $"{Measures.InBoth(torque.Torque.Value)} brings {torque.Group.Id.Value} down to {reached} of the torque at proof load; the house asks for {limit}.",
                "Bolts that are pulled this little do not hold the joint shut: it moves under load, the bolts bend to and fro, work loose and break.",
                torque.PutRight)
            {
                Worked = [.. torque.Worked, $"least: {torque.Window.Low.Line}"],
            });
        }
    }
}
