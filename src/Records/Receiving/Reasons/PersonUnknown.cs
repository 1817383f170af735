using Witnessmark.Language.Findings;
using Witnessmark.Language.Wording;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>Initials that belong to nobody here, or to somebody who was not there.</summary>
public sealed class PersonUnknown : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Fault("person-unknown");

    public static void Check(Held held, FindingList findings)
    {
        var people = held.Library.Workshop.People;
        var crew = held.SignOff.Crew.Select(c => c.Initials.Value).ToHashSet(StringComparer.Ordinal);
        foreach (var signed in Signatures.Of(held))
        {
            var found = people.Find(signed.Initials.Value) is null ? $"{signed.Initials.Value} is nobody in the workshop's list of people."
                : signed.OnSite && !crew.Contains(signed.Initials.Value) ? $"{signed.Initials.Value} has signed but is not in the crew of this sign-off."
                : null;
            if (found is not null)
                findings.Add(
                    Info,
                    signed.Initials.At,
                    found,
                    "A signature is worth what the person behind it may do and has seen.",
                    NearMiss.Of(signed.Initials.Value, people.Names) is { } near && !signed.OnSite
                        ? $"Did you mean {near}?"
                        : $"Known are {Say.Some(people.Names)}; in the crew {Say.Some(crew)}. Ask who has signed, and put the initials or the crew right.");
        }
    }
}
