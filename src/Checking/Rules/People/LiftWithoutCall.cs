using Witnessmark.Checking.Work;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.People;

/// <summary>A load moves and nobody calls.</summary>
public sealed class LiftWithoutCall : IProcedureRule
{
    public static RuleInfo Info { get; } = new("lift-without-call", "People", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var place in scope.Procedure.Walk())
        {
            // nothing hangs
            if (place.Step.Facts.FirstOrDefault(f => f.Word is FactWord.Lift or FactWord.Land) is not { } lift)
                continue;
            // called
            if (place.Step.Find(FactWord.Call) is not null)
                continue;
            // carried by hand, by one person
            if (place.Doers.Length == 1 && Loads.ByHand(scope, lift))
                continue;
            findings.Add(
                Info,
                lift.At,
                $"{Say.Step(place)} {(lift.Word == FactWord.Lift ? "lifts" : "lands")} {lift.Text.Value} and nobody calls.",
                "Who runs the crane cannot see the hands at the rim. Without call and answer the load moves while somebody is still reaching.",
                $"Add a call and its answer: {Example(scope)}.");
        }
    }

    private static string Example(Scope scope) =>
        scope.Library.Workshop.Calls.FirstOrDefault(c => c.Call.Contains("clear", StringComparison.OrdinalIgnoreCase)) is { } call
            ? $"`- call: {call.Id.Value}`"
            : "`- call: hands clear?` and `- answer: clear, both hands on the rim`";
}
