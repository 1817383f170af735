using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>Checked by somebody in another role than the sheet asks for.</summary>
public sealed class CheckerOutOfRole : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Fault("checker-out-of-role");

    public static void Check(Held held, FindingList findings)
    {
        foreach (var answer in held.Answers<CheckAsk>())
        {
            if (Typed.Text(answer.Value) is not { } checker || SecondPersonIsFirst.Is(answer.Entry) || held.SignOff.Crew.FirstOrDefault(c => c.Initials.Value == checker.Value) is not { Role: { } role })
                continue;
            if (role.Value == answer.Ask.Role || held.Library.Workshop.People.Find(checker.Value) is { } person && Has(person, answer.Ask.Role))
                continue;
            findings.Add(
                Info,
                checker.At,
                $"{checker.Value} checked {answer.Entry.Says} as {role.Value}; the sheet asks for {answer.Ask.Role}.",
                "The role says who can see from where he stands, and who is allowed to judge it.",
                $"The {answer.Ask.Role} looks and signs, or the crew at the head is put right.",
                new FurtherPlace(role.At, "the role in the crew"));
        }
    }

    private static bool Has(Person person, string role) => person.Role?.Value == role || person.Also.Any(a => a.Value == role);
}
