using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;
using Witnessmark.Proof;

namespace Witnessmark.Checking.Rules.Contract;

/// <summary>A crew hands over where the machine must not be left.</summary>
public sealed class HandOverUnsafe : IProcedureRule
{
    public static RuleInfo Info { get; } = new("hand-over-unsafe", "Contract", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var part in scope.Procedure.Parts)
        {
            // nothing is handed over
            if (!part.Steps.Any(s => s.Find(FactWord.HandOver) is not null))
                continue;
            foreach (var point in SafeStops.Of(scope, part))
            {
                if (point.Place.Step.Find(FactWord.HandOver) is not { } handOver)
                    continue;
                if (point.Against is [var broken, ..])
                    findings.Add(
                        Info,
                        handOver.At,
                        $"{Say.Step(scope.Procedure, point.Place.Step)} hands over where the machine must not be left: `{broken.Never}` ({broken.Id}).",
                        $"{Sentence(broken)} The next crew walks up to it without having seen how it came to stand so.",
                        NextSafe(scope, part, point));
            }
        }
    }

    private static string Sentence(Interlock rule) =>
        rule.Because is { Value.Length: > 0 } because ? $"{char.ToUpperInvariant(because.Value[0])}{because.Value[1..]}." : "A machine that is left must hold by itself.";

    private static string NextSafe(Scope scope, ProcedurePart part, StopPoint point) =>
        SafeStops.Of(scope, part).FirstOrDefault(p => p.IsSafe && p.Place.Step.Number > point.Place.Step.Number) is { } next
            ? $"Hand over after step {next.Place.Step.Number}, or bring the machine into a state before that it can be left in."
            : "Bring the machine into a state that it can be left in before the hand-over.";
}
