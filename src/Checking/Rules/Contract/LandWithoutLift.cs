using Witnessmark.Checking.Work;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Contract;

/// <summary>A load is landed that no step has lifted.</summary>
public sealed class LandWithoutLift : IProcedureRule
{
    public static RuleInfo Info { get; } = new("land-without-lift", "Contract", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var part in scope.Procedure.Parts)
            foreach (var step in part.Steps)
            {
                // nothing is landed
                if (step.Find(FactWord.Land) is not { } land || Loads.Named(land) is not { } load)
                    continue;
                // lifted before, or by what is performed there
                if (IsLiftedUpTo(scope, part, step, load.Value))
                    continue;
                // taken over on the hook, by contract
                if (Loads.OnHook(part, FactWord.StartsWith))
                    continue;
                findings.Add(
                    Info,
                    land.At,
                    $"{Say.Step(scope.Procedure, step)} lands {load.Value}, and no step before it lifts it.",
                    "The lift is where slings, call and clear zone are named. Without its step the load goes up by habit.",
                    $"Add a step with `lift: {load.Value}` before it. If it hangs from the start, say so: `starts-with: load-on-hook = {load.Value}`.");
            }
    }

    private static bool IsLiftedUpTo(Scope scope, ProcedurePart part, Step step, string load) =>
        part.Steps.Any(s => s.Number <= step.Number && Loads.Handles(scope, s, FactWord.Lift, load));
}
