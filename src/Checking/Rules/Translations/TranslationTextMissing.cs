using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Translations;

/// <summary>The original has a text beside a title, heading or step that the translation leaves out, or the other way round.</summary>
public sealed class TranslationTextMissing : ITranslationRule
{
    public static RuleInfo Info { get; } = new("translation-text-missing", "Translations", Severity.Query);

    public static void Check(TranslatedFile file, FindingList findings)
    {
        if (file.Procedure is not { } procedure || file.Translation is not { Body: { } body } translation)
            return;
        var title = new Comparison(file, $"The title of {procedure.Id.Value}", translation.Of.At, procedure.Id.At, findings);
        if (!file.Pairs[0].IsStale)
            Check(title, procedure, translation, body);
        foreach (var (original, own) in procedure.Parts.Zip(body.Parts).Where(p => p.First.Name is not null))
            new Comparison(file, $"The part {original.Name?.Value}", own.Name?.At ?? translation.Of.At, original.Name!.Value.At, findings).Of("paragraph", original.Prose.Length, own.Prose.Length);
        foreach (var (original, own) in file.SettledSections)
            new Comparison(file, $"The section “{original.Heading?.Value}”", own.Heading?.At ?? translation.Of.At, original.Heading?.At ?? procedure.Id.At, findings).Of("paragraph", original.Prose.Length, own.Prose.Length);
        foreach (var (original, own) in file.SettledSteps)
            Check(new Comparison(file, Say.Step(procedure, original), own.Name.At, original.Name.At, findings), original, own);
    }

    private static void Check(Comparison title, Procedure procedure, Translation translation, TranslatedBody body)
    {
        title.Of("title:", Number(procedure.Title), Number(translation.Title));
        title.Of("heading", Number(procedure.Heading), Number(body.Heading));
        title.Of("paragraph", procedure.Introduction.Length, body.Introduction.Length);
    }

    private static void Check(Comparison step, Step original, Step own)
    {
        // a name and its text may be cut at another place: what counts is that something stands there
        step.Of("text", original.Text.IsEmpty ? 0 : 1, own.Text.IsEmpty ? 0 : 1);
        step.Of("remark", original.Remarks.Length, own.Remarks.Length);
        step.Of("paragraph", original.Blocks.Length, own.Blocks.Length);
    }

    private static int Number(Located<string>? text) => text is { Value.Length: > 0 } ? 1 : 0;

    private sealed record Comparison(TranslatedFile File, string What, Location Own, Location Original, FindingList Findings)
    {
        public void Of(string kind, int there, int here)
        {
            if (there == here)
                return;
            Findings.Add(
                Info,
                Own,
                kind == "title:" ? $"{What} is not translated in the front matter."
                    : $"{What} has {(there == 0 ? $"no {kind}" : Say.Count(there, kind))}; its translation into {File.Language} has {(here == 0 ? "none" : Say.Number(here))}.",
                "What one crew reads and the other does not is known to half of the people at the machine.",
                kind == "title:" ? "Add `title:`." : "Translate all that is written there, and add nothing.",
                new FurtherPlace(Original, "the original"));
        }
    }
}
