using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Messages;

/// <summary>Of the messages before one step a weaker one comes first.</summary>
public sealed class WeakerMessageFirst : IProcedureRule
{
    public static RuleInfo Info { get; } = new("weaker-message-first", "Messages", Severity.Query);

    public static void Check(Scope scope, FindingList findings)
    {
        var sections = scope.Procedure.Parts.SelectMany(p => p.Sections);
        foreach (var together in sections.SelectMany(s => s.Steps.Select(t => t.Messages).Prepend(s.Messages)).Where(m => m.Length > 1))
            foreach (var (first, second) in together.Zip(together.Skip(1)))
            {
                // in order, or one of them is no signal word
                if (first.Signal is null || second.Signal is null || first.Signal >= second.Signal)
                    continue;
                findings.Add(
                    Info,
                    second.Word.At,
                    $"This {second.Word.Value} stands behind a {first.Word.Value}.",
                    "Who reads one line reads the first one. What can kill has to stand above what can scratch.",
                    $"Put the {second.Word.Value} first.",
                    new FurtherPlace(first.Word.At, "the weaker message"));
            }
    }
}
