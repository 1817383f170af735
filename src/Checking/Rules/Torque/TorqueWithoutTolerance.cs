using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Torque;

/// <summary>A torque says nothing about how far off it may be.</summary>
public sealed class TorqueWithoutTolerance : ISheetRule
{
    /// <summary>What is offered: a calibrated wrench holds 4 %.</summary>
    private const decimal Usual = 0.05m;

    public static RuleInfo Info { get; } = new("torque-without-tolerance", "Torque", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var group in machine.Fasteners)
        {
            // no torque, or a tolerance above zero
            if (group.Torque is not { } torque || torque.Value.Tolerance is { Number: > 0 })
                continue;
            var target = torque.Value.Target;
            var tolerance = (target with { Number = target.Number * Usual }).RoundedTo(target.Decimals);
            findings.Add(
                Info,
                torque.At,
                $"{group.Id.Value} get {Measures.InBoth(target)}, and nothing says how far off that may be.",
                "No wrench and no hand meets a torque exactly. Without a tolerance nobody can say whether a bolt that reads a little less is good.",
                tolerance.Number > 0
                    ? $"Write what the maker allows. ± 5 % would be `{new Toleranced(target, tolerance)}`."
                    : "Write what the maker allows, as `235 ± 12 N·m`.");
        }
    }
}
