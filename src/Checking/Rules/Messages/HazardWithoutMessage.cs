using Witnessmark.Checking.Wording;
using Witnessmark.Checking.Work;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Messages;

/// <summary>A step meets a hazard and no message before it says so.</summary>
public sealed class HazardWithoutMessage : IProcedureRule
{
    public static RuleInfo Info { get; } = new("hazard-without-message", "Messages", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        var late = MessageReach.Of(scope)
            .Where(r => r.IsLate)
            .SelectMany(r => r.Missed.Select(m => (m.Place.Step, r.Hazard.Id.Value)))
            .ToHashSet();
        foreach (var (hazard, (place, work)) in scope.HazardsMet())
        {
            // warned of
            if (place.Warns(hazard))
                continue;
            // the message is there and stands too late: message-late says so
            if (late.Contains((place.Step, hazard.Id.Value)))
                continue;
            Report(place, hazard, work, scope, findings);
        }
    }

    private static void Report(StepInPlace place, Hazard hazard, Fact work, Scope scope, FindingList findings)
    {
        var word = SignalWords.Right(scope, hazard) is { } right ? SignalWords.Spelled(right) : "WARNING";
        findings.Add(
            Info,
            work.At,
            $"{Say.Step(place)} meets the hazard {hazard.Id.Value} ({work.Word.Spelled()} {work.Text.Value}), and no message before it says so.",
            "Whoever does this step for the first time learns of the danger by the danger.",
            $"Above the step write `> **{word}: what can happen**`, under it how to avoid that, each line with `> -`, and last `> - hazard: {hazard.Id.Value}`.",
            new FurtherPlace(hazard.Id.At, "the hazard and what work meets it"));
    }
}
