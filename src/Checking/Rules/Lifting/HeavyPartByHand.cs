using Witnessmark.Checking.Work;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Lifting;

/// <summary>A part that is too heavy for one person is taken off or fitted, and nothing lifts it.</summary>
public sealed class HeavyPartByHand : IProcedureRule
{
    public static RuleInfo Info { get; } = new("heavy-part-by-hand", "Lifting", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var handled in scope.Procedure.Amounts())
        {
            var name = handled.Amount.Thing.Value;
            // neither taken off nor fitted, or no load
            if (handled.Fact.Word is not (FactWord.Remove or FactWord.Fit) || scope.Load(name) is not { Mass: { Value.Unit.Kind: "mass" } mass } load)
                continue;
            // light enough, or carried by people: by-hand-too-heavy looks at that
            if (load.ByHand is not null || mass.Value.CompareTo(scope.Library.Workshop.Limits.LiftByHand) <= 0)
                continue;
            // the crane has it, from a step here or from before
            if (scope.Procedure.Steps.Any(s => Loads.Handles(scope, s, FactWord.Lift, name) || Loads.Handles(scope, s, FactWord.Land, name)) || HangsAlready(scope, name))
                continue;
            findings.Add(
                Info,
                handled.Amount.At,
                $"{Say.Step(handled.Place)} {(handled.Fact.Word == FactWord.Fit ? "fits" : "takes off")} {name}, {Measures.InBoth(mass.Value)}, and no step lifts it.",
                "What nobody planned to lift is lifted by hand: a back, a foot or fingers pay for it.",
                $"Add the step that takes its weight, with `lift: {name}`, before this one.",
                new FurtherPlace(mass.At, "its mass"));
        }
    }

    private static bool HangsAlready(Scope scope, string name) =>
        Conditions.At(scope.Procedure, FactWord.StartsWith).Any(c => c.Thing.Value == Loads.Hook && !c.Negated && c.Values.Any(v => v.Value == name));
}
