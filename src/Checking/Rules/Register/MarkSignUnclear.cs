using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Records.Issuing;

namespace Witnessmark.Checking.Rules.Register;

/// <summary>A sign that a thumb or a photocopier turns into another.</summary>
public sealed class MarkSignUnclear : IRegisterRule
{
    public static RuleInfo Info { get; } = new("mark-sign-unclear", "Register", Severity.Fault);

    public static void Check(Library library, FindingList findings)
    {
        foreach (var person in library.Workshop.People)
        {
            // issues no copies
            if (person.MarkSigns is not { } signs)
                continue;
            var unclear = signs.Value.Where(s => !SetMark.Alphabet.Contains(s, StringComparison.Ordinal)).ToList();
            // all of them are told apart
            if (unclear.Count == 0)
                continue;
            findings.Add(
                Info,
                signs.At,
                $"`{unclear[0]}` cannot begin a set mark.",
                "The mark is compared by eye, on paper that was copied and handled: no two of its signs may look alike, and Z is for sheets on trial.",
                $"Use one or more of {string.Join(' ', SetMark.Alphabet.ToCharArray())}.");
        }
    }
}
