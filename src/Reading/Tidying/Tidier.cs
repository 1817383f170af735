using System.Collections.Immutable;
using System.Text;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;
using Witnessmark.Reading.Records;
using Witnessmark.Reading.Sheets;
using Witnessmark.Reading.Steps;

namespace Witnessmark.Reading.Tidying;

/// <summary>
/// Puts the layout of a file in order and changes nothing else. It works on places of the text, never by writing a tree
/// again: what it does not know stays, comments too.
/// </summary>
public static class Tidier
{
    private const char Mark = '\uFEFF';

    /// <param name="file">Read without a fault before.</param>
    /// <returns>Null when everything is in order, and for the register and sign-offs: what is on record stays as it was put there.</returns>
    public static TidiedFile? Tidy(RawFile file)
    {
        if (IsOnRecord(file))
            return null;
        var written = Encoding.UTF8.GetString(file.Bytes.Span);
        var changes = new SortedDictionary<Untidiness, int>();
        var letters = Letters(written, changes);
        var edits = Edits(new SourceText(file.Path, letters)).OrderBy(e => e.At.Start).ThenBy(e => e.At.End).ToList();
        foreach (var edit in edits)
            Count(changes, edit.Kind, 1);
        return changes.Count == 0 ? null : new TidiedFile(OutputFile.Of(file.Path, Apply(letters, edits)), changes.ToImmutableSortedDictionary());
    }

    /// <summary>The register and sign-offs: evidence, which stays as it was put on record.</summary>
    public static bool IsOnRecord(RawFile file)
    {
        var ignored = new FindingList();
        if (IsText(file.Path) || Decode.Text(file, ignored) is not { } source)
            return false;
        var data = YamlTree.Read(source, new TextSpan(0, source.Content.Length), ignored);
        return data is not null && (data.Find(RegisterSheet.Key) ?? data.Find(SignOffReader.Key)) is not null;
    }

    private static bool IsText(string path) => path.EndsWith(".md", StringComparison.OrdinalIgnoreCase);

    /// <summary>What can be put right without knowing what the text says.</summary>
    private static string Letters(string written, SortedDictionary<Untidiness, int> changes)
    {
        var text = written.TrimStart(Mark);
        Count(changes, Untidiness.ByteOrderMark, written.Length - text.Length);
        var lines = text.Replace("\r\n", "\n", StringComparison.Ordinal);
        Count(changes, Untidiness.LineEnds, text.Length - lines.Length);
        if (lines.IsNormalized(NormalizationForm.FormC))
            return lines;
        Count(changes, Untidiness.Letters, lines.Split('\n').Count(l => !l.IsNormalized(NormalizationForm.FormC)));
        return lines.Normalize(NormalizationForm.FormC);
    }

    private static IEnumerable<Edit> Edits(SourceText source)
    {
        var ignored = new FindingList();
        if (!IsText(source.Path))
            return [.. Blanks.Of(source, breaks: []), .. Units.Of(YamlTree.Read(source, new TextSpan(0, source.Content.Length), ignored))];
        if (FrontMatterSpan.Find(source, ignored) is not { } spans || MarkdownText.Parse(source, spans.Body, ignored) is not { } text)
            return [];
        var layout = new MarkdownLayout(source, text, spans.Body);
        return [.. Blanks.Of(source, layout.Breaks), .. Units.Of(YamlTree.Read(source, spans.Data, ignored)), .. layout.Edits()];
    }

    private static void Count(SortedDictionary<Untidiness, int> changes, Untidiness kind, int count)
    {
        if (count > 0)
            changes[kind] = changes.GetValueOrDefault(kind) + count;
    }

    private static string Apply(string text, IEnumerable<Edit> edits)
    {
        var tidied = new StringBuilder(text.Length);
        var at = 0;
        foreach (var edit in edits)
        {
            tidied.Append(text, at, edit.At.Start - at).Append(edit.By);
            at = edit.At.End;
        }
        return tidied.Append(text, at, text.Length - at).ToString();
    }
}
