using Witnessmark.Checking.Work;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.People;

/// <summary>One person alone lifts what needs two.</summary>
public sealed class LiftOnePerson : IProcedureRule
{
    public static RuleInfo Info { get; } = new("lift-one-person", "People", Severity.Query);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var place in scope.Procedure.Walk())
        {
            // nothing is lifted
            if (place.Step.Find(FactWord.Lift) is not { } lift)
                continue;
            // two at least, or nobody named: step-without-doer says that
            if (place.Doers is not [var doer] || Number(scope.Procedure, doer) > 1)
                continue;
            // light enough for one
            if (Loads.ByHand(scope, lift))
                continue;
            var mass = Loads.Named(lift) is { } name && scope.Load(name.Value)?.Mass is { } m ? $" ({m.Value})" : "";
            findings.Add(
                Info,
                lift.At,
                $"{Say.Step(place)} lifts {lift.Text.Value}{mass} and names one person, the {doer}.",
                "One runs the hook and looks at the hook; the load swings or catches where nobody looks.",
                "Name a second one in `by:`, who guides the load and answers the call.");
        }
    }

    private static int Number(Procedure procedure, string role) => procedure.Crew.FirstOrDefault(c => c.Role.Value == role).Number.Value;
}
