using System.Globalization;
using System.Text;
using Witnessmark.Language.Model;

namespace Witnessmark.Records.Hashing;

/// <summary>
/// Which words a translated sheet prints. Its procedure's hash says what was to be done; this one says in which words the
/// person who signed had read it. It changes with every translated word on the sheet and with nothing else.
/// </summary>
/// <param name="Manifest">One line a title, heading, step, message, name and text; <c>sha256sum</c> of the file gives <paramref name="Hex"/>.</param>
/// <param name="Hex">64 digits in lower case.</param>
public sealed record WordsHash(string Manifest, string Hex)
{
    private const string Form = "words 1";

    public static WordsHash Of(SheetTranslations translations)
    {
        var manifest = new StringBuilder(Form).Append('\n').Append(CultureInfo.InvariantCulture, $"language {translations.Language}\n");
        foreach (var line in Lines(translations).Order(StringComparer.Ordinal))
            manifest.Append(line).Append('\n');
        var text = manifest.ToString();
        return new WordsHash(text, Canon.Sha256(text));
    }

    private static IEnumerable<string> Lines(SheetTranslations translations)
    {
        var library = translations.Library;
        foreach (var procedure in translations.All.Where(t => t.Body is not null).Select(t => library.Procedure(t.Of.Value)).OfType<Procedure>())
            foreach (var (number, passage) in Passages.Of(procedure).Index())
                yield return string.Create(CultureInfo.InvariantCulture, $"passage/{procedure.Id.Value}/{number + 1:000} {Canon.Words(passage.Texts).Sha}");
        foreach (var word in SheetWords.Of(translations.Scope))
            yield return $"{(word.IsText ? "text" : "name")}/{Canon.Text(word.Key).Sha} {Canon.Text(Read(word, library.Tongue)).Sha}";
    }

    private static string Read(SheetWord word, Tongue tongue) =>
        word.IsText ? tongue.Text(word.Written) : word.Of is null ? tongue.Name(word.Written) : tongue.Value(word.Written, word.Of);
}
