using Witnessmark.Checking.Work;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Contract;

/// <summary>A load is lifted and not landed.</summary>
public sealed class LoadLeftHanging : IProcedureRule
{
    public static RuleInfo Info { get; } = new("load-left-hanging", "Contract", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var part in scope.Procedure.Parts)
            foreach (var step in part.Steps)
            {
                // nothing is lifted
                if (step.Find(FactWord.Lift) is not { } lift || Loads.Named(lift) is not { } load)
                    continue;
                // landed by a later step, by what is performed there, or after going back
                if (IsLandedFrom(scope, part, step, load.Value))
                    continue;
                // handed over on the hook, by contract
                if (Loads.OnHook(part, FactWord.EndsWith))
                    continue;
                findings.Add(
                    Info,
                    lift.At,
                    $"{Say.Step(scope.Procedure, step)} lifts {load.Value}, and no step after it lands it.",
                    "A load on the hook is no place to stop. Somebody walks off, the crane creeps down, and the next one stands under it.",
                    $"Add `land: {load.Value} on …` where its weight comes off the hook. If the next crew takes it over hanging, say so: `ends-with: load-on-hook = {load.Value}`.");
            }
    }

    private static bool IsLandedFrom(Scope scope, ProcedurePart part, Step step, string load) =>
        From(part, step).Any(s => Loads.Handles(scope, s, FactWord.Land, load));

    /// <summary>The steps that may come from here on: all of them when one goes back.</summary>
    private static IEnumerable<Step> From(ProcedurePart part, Step step)
    {
        var later = part.Steps.Where(s => s.Number >= step.Number).ToList();
        return later.Any(s => s.Find(FactWord.AgainFrom) is not null) ? part.Steps : later;
    }
}
