using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Register;

/// <summary>Two people begin the marks of their copies with one sign.</summary>
public sealed class MarkSignShared : IRegisterRule
{
    public static RuleInfo Info { get; } = new("mark-sign-shared", "Register", Severity.Fault);

    public static void Check(Library library, FindingList findings)
    {
        var signs = library.Workshop.People
            .Where(p => p.MarkSigns is not null)
            .SelectMany(p => p.MarkSigns!.Value.Value.Distinct(), (person, sign) => (Person: person, Sign: sign));
        foreach (var sign in signs.GroupBy(s => s.Sign))
            foreach (var (person, _) in sign.Skip(1))
                findings.Add(
                    Info,
                    person.MarkSigns!.Value.At,
                    $"{person.Id} and {sign.First().Person.Id} both begin the marks of their copies with {sign.Key}.",
                    "Two who issue at once, each with a clone of the workshop, can then give one mark to two copies.",
                    $"Give {person.Id} another sign that nobody has.",
                    new FurtherPlace(sign.First().Person.MarkSigns!.Value.At, $"{sign.First().Person.Id} has it here"));
    }
}
