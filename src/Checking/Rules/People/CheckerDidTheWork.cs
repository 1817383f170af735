using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.People;

/// <summary>Who checks a step is one of those who do it.</summary>
public sealed class CheckerDidTheWork : IProcedureRule
{
    public static RuleInfo Info { get; } = new("checker-did-the-work", "People", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var place in scope.Procedure.Walk())
        {
            if (place.Step.Find(FactWord.CheckedBy) is { Value: Checker checker } fact && IsSamePerson(place, checker))
                Report(place, place.Step.Number, checker.Role.Value, fact, findings);
            if (place.Step.Find(FactWord.Checks) is { Value: NameList names } checks)
                foreach (var name in names.Names)
                    if (Checked(place, name.Value) is { } done && InBoth(done, place) is { } role)
                        Report(place, done.Step.Number, role, checks, findings);
        }
    }

    /// <summary>A role of one person that does the one and the other.</summary>
    private static string? InBoth(StepInPlace done, StepInPlace check) =>
        done.Doers.Intersect(check.Doers).FirstOrDefault(r => IsOnePerson(check.Procedure, r));

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

    private static StepInPlace? Checked(StepInPlace from, string name)
    {
        var slug = StepName.Slug(name);
        return from.Procedure.Walk().LastOrDefault(p => p.Step.Number <= from.Step.Number && p.Step.Slug == slug);
    }

    private static void Report(StepInPlace place, int done, string role, Fact fact, FindingList findings) =>
        findings.Add(
            Info,
            fact.Text.At,
            $"Step {done} of {place.Procedure.Id.Value}: the {role} does it and checks it.",
            "Nobody finds his own slip: he sees what he meant to do. A second look is worth something only with second eyes.",
            $"Name another role, or take the {role} out of `by:`.",
            place.Effective(FactWord.By) is { } by ? [new FurtherPlace(by.Text.At, $"done by {by.Text.Value}")] : []);
}
