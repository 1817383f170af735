using System.Globalization;
using Witnessmark.Checking.Rules.Steps;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Translations;

/// <summary>The translated name of a step takes more lines beside its boxes than a glance takes in.</summary>
public sealed class TranslationNameTooWide : ITranslationRule
{
    public static RuleInfo Info { get; } = new("translation-name-too-wide", "Translations", Severity.Query);

    public static void Check(TranslatedFile file, FindingList findings)
    {
        foreach (var (original, own) in file.SettledSteps)
        {
            // the boxes beside it are those of the original
            var (lines, column) = StepNameTooWide.Lines(original, own.NameWithStop);
            if (lines <= StepNameTooWide.MostLines)
                continue;
            findings.Add(
                Info,
                own.Name.At,
                string.Create(CultureInfo.InvariantCulture, $"{Say.Step(file.Procedure!, original)} has a name in {file.Language} that takes {lines} lines on the sheet; two are the most in the {column:0} mm that it has."),
                "The name is what is read with a glance between two grips, in every language.",
                "Keep the verb and the thing in the bold name, and put the rest behind it in plain type.",
                new FurtherPlace(original.Name.At, "the original"));
        }
    }
}
