using Witnessmark.Language.Findings;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Translations;

/// <summary>A step of the original has no translation.</summary>
public sealed class TranslationStepMissing : ITranslationRule
{
    public static RuleInfo Info { get; } = new("translation-step-missing", "Translations", Severity.Query);

    public static void Check(TranslatedFile file, FindingList findings)
    {
        if (file.Procedure is not { } procedure || file.Translation.Body is not { } body)
            return;
        var missing = procedure.Steps.Where(s => body.Step(s.Number) is null).ToList();
        if (missing.Count == 0)
            return;
        var numbers = Say.Some(missing.Select(s => Say.Number(s.Number)));
        findings.Add(
            Info,
            file.Translation.Of.At,
            $"{Say.Capital(Say.Count(missing.Count, "step"))} of {procedure.Id.Value} {(missing.Count == 1 ? "is" : "are")} not translated into {file.Language}: {numbers}.",
            "A sheet with a step left out looks complete: nobody would do it, and nobody would miss it. So it is not printed.",
            $"Translate {(missing.Count == 1 ? "it" : "them")} under {(missing.Count == 1 ? "its own number" : "their own numbers")}.",
            [.. missing.Take(3).Select(s => new FurtherPlace(s.Name.At, $"step {Say.Number(s.Number)}"))]);
    }
}
