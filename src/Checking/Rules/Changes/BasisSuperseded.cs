using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Records.Hashing;

namespace Witnessmark.Checking.Rules.Changes;

/// <summary>A number rests on a maker's document that has a later revision.</summary>
public sealed class BasisSuperseded : ISheetRule
{
    private const string Basis = "basis";

    public static RuleInfo Info { get; } = new("basis-superseded", "Changes", Severity.Query);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var document in library.Workshop.MakerData)
            foreach (var (at, thing) in Bases(machine.Node, machine.Id.Value))
            {
                // another document, or the revision that holds
                if (document.Superseded.FirstOrDefault(r => Names(at.Text, document.Document.Value, r.Value)) is not { Value: { } old })
                    continue;
                var users = Users(machine, thing, library);
                findings.Add(
                    Info,
                    at.At,
                    $"{thing} rests on {document.Document} rev {old}; rev {document.Revision} holds now.{(users.Count == 0 ? "" : $" {Say.And(users)} {(users.Count == 1 ? "uses" : "use")} it.")}",
                    "A maker who revises a sheet has a reason: a bolt that broke, a seal that leaked. The number may be the one that was changed.",
                    $"Compare it with rev {document.Revision}. Then write that revision as the basis, and give the procedures that use it a new version where the number has changed.",
                    new FurtherPlace(document.Revision.At, "the revision that holds"));
            }
    }

    /// <summary>Every <c>basis</c> of a sheet, with the thing that it stands under.</summary>
    private static IEnumerable<(DataText At, string Thing)> Bases(DataNode node, string thing) => node is not DataMap map ? [] : map.Entries.SelectMany(e =>
        e.Key.Value == Basis && e.Value is DataText text ? [(text, thing)] : Bases(e.Value, e.Key.Value));

    private static bool Names(string basis, string document, string revision) =>
        $"{basis},".Contains($"{document} rev {revision},", StringComparison.OrdinalIgnoreCase) || $"{basis} ".Contains($"{document} rev {revision} ", StringComparison.OrdinalIgnoreCase);

    private static List<string> Users(Machine machine, string thing, Library library) =>
    [
        .. library.Procedures.Where(p => p.Machine?.Value == machine.Id.Value)
            .Where(p => thing == machine.Id.Value || Reached.From(library.ScopeOf(p)).Values.Any(i => i.Id.Value == thing))
            .Select(p => p.Id.Value),
    ];
}
