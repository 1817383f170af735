using Witnessmark.Engineering;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Torque;

/// <summary>A group names the share of proof load it aims at, and its torque aims elsewhere.</summary>
public sealed class TorqueMissesAim : ISheetRule
{
    /// <summary>Of proof load: what rounding a torque to a number that can be dialled may cost.</summary>
    private const decimal Near = 0.05m;

    public static RuleInfo Info { get; } = new("torque-misses-aim", "Torque", Severity.Query);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var torque in TorqueCase.Of(machine, library))
        {
            // no aim of its own: the window is all that is asked
            if (torque.Group.ProofFraction is not { } aim)
                continue;
            // outside the window is the nearer cause
            if (torque.GoesAbove || torque.GoesBelow)
                continue;
            var share = torque.ShareOfProof(torque.Torque.Value.Target);
            // near enough
            if (Math.Abs(share - aim.Value) <= Near)
                continue;
            var target = torque.Window.Target.Value.In(torque.Torque.Value.Target.Unit).RoundedTo(torque.Torque.Value.Target.Decimals);
            findings.Add(new Finding(
                Info,
                torque.Torque.At,
                $"The aim of {torque.Group.Id.Value} is {Figures.Percent(aim.Value)} of proof load, but {torque.Torque.Value.Target} is {Figures.Percent(share)}.",
                "One of the two numbers was changed and the other was not; nobody can see which one is meant.",
                $"{target} is {Figures.Percent(aim.Value)} of proof load for {torque.Bolt}. Write that, or change the aim.")
            {
                Further = [new FurtherPlace(aim.At, $"the aim: {Figures.Percent(aim.Value)}")],
                Worked = [.. torque.Worked, $"torque at the aim: {torque.Window.Target.Line}"],
            });
        }
    }
}
