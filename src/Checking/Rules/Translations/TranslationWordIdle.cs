using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Translations;

/// <summary>Translated texts stand no longer, or never stood, in the file that they were taken from, and no sheet prints them.</summary>
public sealed class TranslationWordIdle : ITranslationRule
{
    public static RuleInfo Info { get; } = new("translation-word-idle", "Translations", Severity.Query);

    public static void Check(TranslatedFile file, FindingList findings)
    {
        if (file.Original is not { } original || file.Translation.Texts.IsEmpty)
            return;
        var known = Scalars(original).Select(Tongue.Folded).ToHashSet(StringComparer.Ordinal);
        // every text stands in the original
        if (file.Translation.Texts.All(Stands))
            return;
        known.UnionWith(Printed(file.Library).Select(Tongue.Folded));
        // what does not is printed by a sheet
        if (file.Translation.Texts.All(Stands))
            return;
        var idle = file.Translation.Texts.Where(t => !Stands(t)).Select(t => t.From).ToList();
        var many = idle.Count > 1;
        findings.Add(
            Info,
            idle[0].At,
            $"{Say.Count(idle.Count, "translated text")} {(many ? "stand" : "stands")} nowhere in {file.Translation.Of.Value}: {Say.Some(idle.Select(t => $"“{Say.Short(t.Value)}”"))}.",
            "The original was changed, or this was never its wording: what is printed now has no translation, or an old one.",
            !many && Nearest(idle[0].Value, known) is { } near
                ? $"The original may now say “{Say.Short(near)}”: read it, put the translation right, and copy the original here."
                : $"Write {(many ? "them" : "it")} as the original has {(many ? "them" : "it")}, or take {(many ? "them" : "it")} out.",
            [.. idle.Skip(1).Select(t => new FurtherPlace(t.At, "and this"))]);

        bool Stands(WordPair text) => known.Contains(Tongue.Folded(text.From.Value));
    }

    /// <summary>The texts of all sheets: looked through only when they are asked for, since there may be thousands.</summary>
    private static IEnumerable<string> Printed(Library library) =>
        library.Procedures.SelectMany(p => SheetWords.Of(library.ScopeOf(p))).Where(w => w.IsText).Select(w => w.Written);

    private static IEnumerable<string> Scalars(DataNode node) => node switch
    {
        DataMap map => map.Entries.SelectMany(e => Scalars(e.Value)),
        DataList list => list.Items.SelectMany(Scalars),
        DataText text => [text.Text],
        _ => [],
    };

    /// <summary>The text that begins or ends alike over half its length: the same one, changed since.</summary>
    private static string? Nearest(string written, IEnumerable<string> texts) => texts
        .Where(t => t.Length > 3 && Alike(written, t) * 2 > Math.Min(written.Length, t.Length))
        .OrderByDescending(t => Alike(written, t)).ThenBy(t => t, StringComparer.Ordinal).FirstOrDefault();

    private static int Alike(string a, string b) => Math.Max(Beginning(a, b), Beginning(a.Reverse(), b.Reverse()));

    private static int Beginning(IEnumerable<char> a, IEnumerable<char> b) => a.Zip(b).TakeWhile(c => c.First == c.Second).Count();
}
