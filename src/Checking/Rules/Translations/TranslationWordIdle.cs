using System.Collections.Immutable;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Translations;

/// <summary>A translated name or text is not, or no longer, in the file that it was taken from, and no sheet prints it.</summary>
public sealed class TranslationWordIdle : ITranslationRule
{
    public static RuleInfo Info { get; } = new("translation-word-idle", "Translations", Severity.Query);

    public static void Check(TranslatedFile file, FindingList findings)
    {
        if (file.Original is not { } original || file.Translation is { Names.IsEmpty: true, Texts.IsEmpty: true })
            return;
        var printed = file.Library.Procedures.SelectMany(p => SheetWords.Of(file.Library.ScopeOf(p))).ToList();
        var names = Scalars(original).Concat(printed.Where(w => !w.IsText).SelectMany(w => new[] { w.Written, w.Key })).ToImmutableHashSet(StringComparer.Ordinal);
        var texts = Scalars(original).Concat(printed.Where(w => w.IsText).Select(w => w.Written)).Select(Tongue.Folded).ToImmutableHashSet(StringComparer.Ordinal);
        foreach (var name in file.Translation.Names.Where(n => !names.Contains(n.From.Value)))
            Report(file, name.From, "name", NearMiss.Of(name.From.Value, names), findings);
        foreach (var text in file.Translation.Texts.Where(t => !texts.Contains(Tongue.Folded(t.From.Value))))
            Report(file, text.From, "text", Nearest(text.From.Value, texts), findings);
    }

    private static IEnumerable<string> Scalars(DataNode node) => node switch
    {
        DataMap map => map.Entries.SelectMany(e => Scalars(e.Value).Prepend(e.Key.Value)),
        DataList list => list.Items.SelectMany(Scalars),
        DataText text => [text.Text],
        _ => [],
    };

    /// <summary>The text that begins or ends alike over half its length: the same one, changed since.</summary>
    private static string? Nearest(string written, IEnumerable<string> texts) => texts
        .Where(t => Alike(written, t) * 2 > Math.Min(written.Length, t.Length) && t.Length > 3)
        .OrderByDescending(t => Alike(written, t)).ThenBy(t => t, StringComparer.Ordinal).FirstOrDefault();

    private static int Alike(string a, string b) => Math.Max(a.Zip(b).TakeWhile(c => c.First == c.Second).Count(), a.Reverse().Zip(b.Reverse()).TakeWhile(c => c.First == c.Second).Count());

    private static void Report(TranslatedFile file, Located<string> word, string kind, string? near, FindingList findings) => findings.Add(
        Info,
        word.At,
        $"The {kind} “{Say.Short(word.Value)}” stands nowhere in {file.Translation.Of.Value}, and no sheet prints it.",
        "The original was changed, or this was never its wording: what is printed now has no translation, or an old one.",
        near is null ? "Take it out, or write it as the original has it." : $"The original may now say “{Say.Short(near)}”: read it, put the translation right, and copy the original here.");
}
