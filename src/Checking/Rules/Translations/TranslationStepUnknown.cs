using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Translations;

/// <summary>A translated step has a number that the original does not have, or has it twice, or stands in another section.</summary>
public sealed class TranslationStepUnknown : ITranslationRule
{
    public static RuleInfo Info { get; } = new("translation-step-unknown", "Translations", Severity.Query);

    public static void Check(TranslatedFile file, FindingList findings)
    {
        if (file.Procedure is not { } procedure || file.Translation.Body is not { } body)
            return;
        var known = procedure.Steps.ToDictionary(s => s.Number);
        foreach (var step in body.Steps)
        {
            // a number of its own
            if (!known.TryGetValue(step.WrittenNumber.Value, out var original))
                Report(step, $"The translation has a step {Number(step)}, and {procedure.Id.Value} has {Say.Count(known.Count, "step")}.", "Take it out, or give it the number of the step that it translates.", findings);
            // a number twice
            else if (!ReferenceEquals(body.Step(step.WrittenNumber.Value), step))
                Report(step, $"Step {Number(step)} of {procedure.Id.Value} is translated twice.", "Keep one of them, or give it its right number.", findings, new FurtherPlace(body.Step(step.WrittenNumber.Value)!.Name.At, "the first one"));
            // under another heading
            else if (file.Sections.Any(s => s.Own.Steps.Contains(step) && !s.Original.Steps.Contains(original)))
                Report(step, $"Step {Number(step)} of {procedure.Id.Value} stands in another section than its translation.", "Put it under the heading that it has in the original.", findings, new FurtherPlace(original.Name.At, "it stands here"));
        }
    }

    private static string Number(Step step) => Say.Number(step.WrittenNumber.Value);

    private static void Report(Step step, string found, string putRight, FindingList findings, params FurtherPlace[] further) =>
        findings.Add(Info, step.WrittenNumber.At, found, "Words are set beside the step that carries the same number: the crew would read them at other work.", putRight, [.. further]);
}
