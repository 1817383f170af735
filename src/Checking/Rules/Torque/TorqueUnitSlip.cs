using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Torque;

/// <summary>A torque does not suit its bolts, but the same number in another unit does.</summary>
public sealed class TorqueUnitSlip : ISheetRule
{
    public static RuleInfo Info { get; } = new("torque-unit-slip", "Torque", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var torque in TorqueCase.Of(machine, library))
        {
            // it suits as written, or no other unit makes it suit
            if (torque.Slip is not { } slip)
                continue;
            var written = torque.Torque.Value;
            var meant = written with { Target = slip.Meant, Tolerance = written.Tolerance is { } t ? t with { Unit = slip.Meant.Unit } : null, Beside = null };
            findings.Add(new Finding(
                Info,
                torque.Torque.At,
                $"For {torque.Group.Id.Value} ({torque.Bolt}), {slip.Line}.",
                slip.ShareWritten > slip.ShareMeant
                    ? "A bolt pulled past proof stays longer than it was: it clamps less from then on and breaks later, under load."
                    : "Bolts that are pulled this little work loose.",
                $"Did you mean `{meant}`?")
            {
                Worked = torque.Worked,
            });
        }
    }
}
