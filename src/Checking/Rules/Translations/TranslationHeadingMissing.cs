using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Translations;

/// <summary>A heading of the original is missing in the translation, or there is one more.</summary>
public sealed class TranslationHeadingMissing : ITranslationRule
{
    public static RuleInfo Info { get; } = new("translation-heading-missing", "Translations", Severity.Query);

    public static void Check(TranslatedFile file, FindingList findings)
    {
        if (file.Procedure is not { } procedure || file.Translation.Body is not { } body)
            return;
        var (original, own) = (Headings(procedure.Parts), Headings(body.Parts));
        // parts are called by name from other procedures, so their names stay
        if (PartNames(procedure.Parts) != PartNames(body.Parts))
            Report(file, $"{procedure.Id.Value} has the parts {PartNames(procedure.Parts)}; its translation has {PartNames(body.Parts)}.", findings);
        else if (original != own)
            Report(file, $"{procedure.Id.Value} has {Say.Count(original, "heading")}; its translation into {file.Language} has {Say.Number(own)}.", findings);
    }

    private static int Headings(IEnumerable<ProcedurePart> parts) => parts.SelectMany(p => p.Sections).Count(s => s.Heading is not null);

    private static string PartNames(IEnumerable<ProcedurePart> parts) =>
        Say.And(parts.Select(p => p.Name is { } name ? $"`{name.Value}`" : "without a name"));

    private static void Report(TranslatedFile file, string found, FindingList findings) => findings.Add(
        Info,
        file.Translation.Of.At,
        found,
        "Zone, crew and warnings of a heading hold for what stands below it. With one heading less, a step would come under another.",
        "Give the translation the headings of the original, in its order; the name behind `# Part:` stays as it is.");
}
