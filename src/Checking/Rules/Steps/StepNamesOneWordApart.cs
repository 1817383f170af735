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
        var names = new HashSet<Step>(new FoldedName(scope));
        foreach (var step in scope.Procedure.Steps)
        {
            var words = step.Name.Value.Words();
            // a single word has no small one beside it
            if (!words.MoveNext() || !words.MoveNext())
                continue;
            // no name before it is like it
            if (names.Add(step) || !names.TryGetValue(step, out var first))
                continue;
            var (one, other) = (first.Name.Value.WordsInLowerCase(), step.Name.Value.WordsInLowerCase());
            // the same name in two sections is one step done twice
            if (one.SequenceEqual(other))
                continue;
            // the difference already comes first
            if (one[0] != other[0])
                continue;
            Report(scope.Procedure, first, step, Difference(one, other), findings);
        }
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
