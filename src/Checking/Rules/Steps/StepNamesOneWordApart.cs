using Witnessmark.Checking.Wording;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Steps;

/// <summary>Two names differ only in a small word that turns one step into the other.</summary>
public sealed class StepNamesOneWordApart : IProcedureRule
{
    public static RuleInfo Info { get; } = new("step-names-one-word-apart", "Steps", Severity.Query);

    public static void Check(Scope scope, FindingList findings)
    {
        var alike = scope.Procedure.StepNames().Where(n => n.Words.Length > 1).GroupBy(n => Folded(n.Words, scope), StringComparer.Ordinal);
        foreach (var group in alike)
            foreach (var (step, words) in group.Skip(1))
            {
                var first = group.First();
                // the same name in two sections is one step done twice
                if (first.Words.SequenceEqual(words))
                    continue;
                // the difference already comes first
                if (first.Words[0] != words[0])
                    continue;
                Report(scope.Procedure, first.Step, step, Difference(first.Words, words), findings);
            }
    }

    /// <summary>The name with its opposites folded into one and its negations left out.</summary>
    private static string Folded(string[] words, Scope scope)
    {
        var sets = scope.IsSpanish() ? Words.OppositesSpanish : Words.OppositesEnglish;
        return string.Join(' ', words
            .Where((w, i) => i == 0 || !(Words.Forbidding.Has(w, scope) || w == "do"))
            .Select(w => sets.GetValueOrDefault(w, w)));
    }

    private static string Difference(string[] first, string[] second)
    {
        var only = first.Except(second, StringComparer.Ordinal).Concat(second.Except(first, StringComparer.Ordinal));
        return Say.And(only.Distinct(StringComparer.Ordinal).Select(w => $"“{w}”"));
    }

    private static void Report(Procedure procedure, Step first, Step second, string difference, FindingList findings) =>
        findings.Add(
            Info,
            second.Name.At,
            $"Steps {first.Number} and {second.Number} of {procedure.Id.Value} have names that differ only in {difference}.",
            "On oily paper at arm's length the two read alike, and the hand does the one that it did last.",
            "Bring the difference to the front of the name, as in “Left side: fit the pin”, “Right side: fit the pin”.",
            new FurtherPlace(first.Name.At, $"step {first.Number}: {first.Name.Value}"));
}
