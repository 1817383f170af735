using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Reading.Faults;

namespace Witnessmark.Reading.References;

/// <summary>Holds the roles of people and of a release against those that the workshop file declares.</summary>
internal static class WorkshopCheck
{
    public static void Check(Library library, FindingList findings)
    {
        var workshop = library.Workshop;
        foreach (var person in workshop.People)
            foreach (var role in person.Also.Select(r => (Located<string>?)r).Prepend(person.Role).OfType<Located<string>>().Where(IsUnknown))
                findings.Add(Role(role, $"{person.Id.Value} has the role", library));
        foreach (var role in workshop.ReleasedNeeds.Where(IsUnknown))
            findings.Add(Role(role, "A release needs the role", library));

        bool IsUnknown(Located<string> role) => workshop.Roles.Count > 0 && workshop.Roles.Find(role.Value) is null;
    }

    private static Finding Role(Located<string> role, string whose, Library library) => new(
        StepFaults.NameUnknown,
        role.At,
        $"{whose} `{Say.Short(role.Value)}`, which is not one of the workshop's.",
        "What a role may do is written once; an unknown role may do anything, or nothing.",
        NearMiss.Of(role.Value, library.Workshop.Roles.Names) is { } near ? $"Did you mean `{near}`?" : $"Its roles are {Say.Or(library.Workshop.Roles.Names)}.");
}
