using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Translations;

/// <summary>A translated procedure performs one that is not translated.</summary>
public sealed class TranslationPerformedMissing : ITranslationRule
{
    public static RuleInfo Info { get; } = new("translation-performed-missing", "Translations", Severity.Query);

    public static void Check(TranslatedFile file, FindingList findings)
    {
        if (file.Procedure is not { } procedure)
            return;
        var missing = SheetTranslations.Of(file.Library.ScopeOf(procedure), file.Translation.Language.Value).Missing;
        if (missing.IsEmpty)
            return;
        findings.Add(
            Info,
            file.Translation.Of.At,
            $"{procedure.Id.Value} performs {Say.And(missing)}, which {(missing.Length == 1 ? "is" : "are")} not translated into {file.Language}.",
            "Those steps are printed on the same sheet, and the crew could not read them. So it is not printed.",
            $"Translate {Say.And(missing)} too.",
            [.. missing.Select(file.Library.Procedure).OfType<Procedure>().Select(p => new FurtherPlace(p.Id.At, $"{p.Id.Value} is here"))]);
    }
}
