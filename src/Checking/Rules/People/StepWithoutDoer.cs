using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.People;

/// <summary>Nobody is named who does the step.</summary>
public sealed class StepWithoutDoer : IProcedureRule
{
    public static RuleInfo Info { get; } = new("step-without-doer", "People", Severity.Query);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var part in scope.Procedure.Parts)
        {
            // one finding a part: a line under its heading is enough
            if (scope.Procedure.Walk().FirstOrDefault(p => ReferenceEquals(p.Part, part) && NamesNobody(p)) is not { } place)
                continue;
            findings.Add(
                Info,
                place.Step.Name.At,
                $"{Say.Step(place)} does not say who does it.",
                "With two people at a wheel end each thinks that the other has done it.",
                "Write `- by: mechanic` under the heading for all steps below, and again on each step that somebody else does.");
        }
    }

    private static bool NamesNobody(StepInPlace place) => place.Effective(FactWord.By) is null && place.Step.Find(FactWord.Perform) is null;
}
