using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Proof;

namespace Witnessmark.Checking.Rules.Contract;

/// <summary>A machine has loads, states or openings, and nothing says when it may be left.</summary>
public sealed class SafeStopUnsaid : ISheetRule
{
    public static RuleInfo Info { get; } = new("safe-stop-unsaid", "Contract", Severity.Query);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        // nothing hangs, stands open or changes
        if (machine is { Loads.Count: 0, States.Count: 0, Openings.Count: 0 })
            return;
        // it says so
        if (SafeStops.AreKnownOf(machine))
            return;
        findings.Add(
            Info,
            machine.Id.At,
            $"No interlock of {machine.Id} says when people must not leave the machine.",
            "Shifts end and weather comes. Without such a rule sheet and card cannot say after which steps the machine can be left, and a crew decides for itself.",
            "Write what must never be so at a stop, one interlock each, for example `never: safe stop, load-on-hook is not none`.");
    }
}
