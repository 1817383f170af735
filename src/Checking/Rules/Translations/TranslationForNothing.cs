using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Translations;

/// <summary>A translation of what is not there, or into the language that it is written in.</summary>
public sealed class TranslationForNothing : ITranslationRule
{
    public static RuleInfo Info { get; } = new("translation-for-nothing", "Translations", Severity.Query);

    public static void Check(TranslatedFile file, FindingList findings)
    {
        var of = file.Translation.Of;
        // nothing of that name
        if (file.Original is null)
            findings.Add(
                Info,
                of.At,
                $"This file translates {of.Value}, and nothing in the workshop is called that.",
                "Its words are printed on no sheet, while whoever wrote it thinks that the crew reads them.",
                NearMiss.Of(of.Value, Known(file.Library)) is { } near ? $"Did you mean `{near}`?" : "Write the id of a procedure, a data sheet or a tool list, or `workshop`; or take the file out.");
        // steps need a procedure, and a procedure needs steps
        else if (file.Library.Procedure(of.Value) is null != file.Translation.Body is null)
            findings.Add(
                Info,
                of.At,
                file.Translation.Body is null ? $"{of.Value} is a procedure, and this file has no steps." : $"{of.Value} has no steps, and this file has.",
                "Half a translation is not printed.",
                file.Translation.Body is null ? "Translate a procedure in a Markdown file, with its headings and step numbers." : "Translate data in a .yaml file, with `names:` and `texts:`.");
        // its own language
        else if (file.Procedure is { } procedure && SheetTranslations.LanguageOf(file.Library, procedure) == file.Translation.Language.Value)
            findings.Add(
                Info,
                file.Translation.Language.At,
                $"{of.Value} is written in {file.Language} already.",
                "Two wordings in one language: nobody could say which the crew has read.",
                "Take the file out, or say which language it is in.");
    }

    private static IEnumerable<string> Known(Library library) =>
        [.. library.Procedures.Names, .. library.Machines.Names, .. library.ToolLists.Names, Translation.WorkshopName];
}
