using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.People;

/// <summary>Who checks a step is one of those who do it.</summary>
public sealed class CheckerDidTheWork : IProcedureRule
{
    public static RuleInfo Info { get; } = new("checker-did-the-work", "People", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        var places = scope.Procedure.Walk().ToList();
        foreach (var place in places)
        {
            if (place.Step.Find(FactWord.CheckedBy) is { Value: Checker checker } fact && IsSamePerson(place, checker))
                Report(place, place.Step.Number, checker.Role.Value, fact, findings);
            if (place.Step.Find(FactWord.Checks) is { Value: NameList names } checks)
                foreach (var done in names.Names.Select(n => Checked(places, place, n.Value)).OfType<StepInPlace>())
                    if (done.Doers.Intersect(place.Doers).FirstOrDefault(r => IsOnePerson(scope.Procedure, r)) is { } role)
                        Report(place, done.Step.Number, role, checks, findings);
        }
    }

    private static bool IsSamePerson(StepInPlace place, Checker checker)
    {
        // somebody else does it
        if (!place.Doers.Contains(checker.Role.Value))
            return false;
        // two of them are there: one does, the other checks
        if (!IsOnePerson(place.Procedure, checker.Role.Value))
            return false;
        // two work together and watch each other
        return checker.Mode == CheckMode.Independent || place.Doers.Length == 1;
    }

    private static bool IsOnePerson(Procedure procedure, string role) =>
        procedure.Crew.FirstOrDefault(c => c.Role.Value == role).Number.Value < 2;

    private static StepInPlace? Checked(List<StepInPlace> places, StepInPlace from, string name) =>
        places.LastOrDefault(p => p.Step.Slug == StepName.Slug(name) && p.Step.Number <= from.Step.Number);

    private static void Report(StepInPlace place, int done, string role, Fact fact, FindingList findings) =>
        findings.Add(
            Info,
            fact.Text.At,
            $"Step {done} of {place.Procedure.Id.Value}: the {role} does it and checks it.",
            "Nobody finds his own slip: he sees what he meant to do. A second look is worth something only with second eyes.",
            $"Name another role, or take the {role} out of `by:`.",
            place.Effective(FactWord.By) is { } by ? [new FurtherPlace(by.Text.At, $"done by {by.Text.Value}")] : []);
}
