using Witnessmark.Comparing;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Changes;

/// <summary>A limit of the house or a guard of a data sheet lets more through, and the procedures that stand on it go on as they were.</summary>
public sealed class GuardLoosened : IHouseChangeRule
{
    public static RuleInfo Info { get; } = new("guard-loosened", "Changes", Severity.Query);

    public static void Check(ChangedHouse changed, FindingList findings)
    {
        foreach (var change in changed.Compared.House)
        {
            // not a guard, or not weaker
            if (change.Class != ChangeClass.Hazard || change.Sense != Sense.Looser)
                continue;
            var standing = changed.Made.Procedures.Where(p => StandsOn(p, change.Where) && GoesOn(p, changed.Old)).Select(p => p.Id.Value).ToList();
            // each of them was approved anew, or nobody works from them
            if (standing.Count == 0)
                continue;
            findings.Add(
                Info,
                change.NewAt ?? Home(changed.Made, change.Where) ?? changed.Made.Workshop.Node.At,
                $"{change.Where}: `{change.What}` lets more through than before ({change.Old ?? "nothing"} → {change.New ?? "nothing"}). {Say.And(standing)} {(standing.Count == 1 ? "stands" : "stand")} on it and {(standing.Count == 1 ? "goes" : "go")} on unchanged.",
                "Whoever approved those procedures counted on the guard as it was. No line of theirs has changed, so nobody is asked again.",
                "Take it back; or give each of them its next first number, with two approvals, one of them independent.",
                [.. change.OldAt is { } at ? new[] { new FurtherPlace(at, "as it was") } : []]);
        }
    }

    /// <summary>What is told of `workshop` concerns everybody; of a data sheet or tool list, those who use it.</summary>
    private static bool StandsOn(Procedure procedure, string where) =>
        Sheet(where) is var sheet && (sheet == "workshop" || procedure.Machine?.Value == sheet || procedure.UsesTools.Any(t => t.Value == sheet));

    private static string Sheet(string where) => where.Split(',')[0];

    private static bool GoesOn(Procedure procedure, Library old) =>
        procedure.Status?.Value == ReleaseStatus.Released && old.Procedure(procedure.Id.Value) is { Status.Value: ReleaseStatus.Released } before
        && First(before.Version?.Value) == First(procedure.Version?.Value);

    private static string? First(string? version) => version?.Split('.')[0];

    private static Location? Home(Library library, string where) =>
        library.Machines.FirstOrDefault(m => m.Id.Value == Sheet(where))?.Id.At ?? library.ToolLists.FirstOrDefault(t => t.Id.Value == Sheet(where))?.Id.At;
}
