using System.Text.RegularExpressions;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;

namespace Witnessmark.Records.Tests.Laws;

/// <summary>Other spellings of the same data: in files of data and in front matter.</summary>
internal static partial class YamlLayout
{
    public static string Comments(string path, string text, Dice dice) =>
        InData(path, text, (data, _) => KeyLine().Replace(data, m => dice.OneIn(6) ? $"{m.Groups[1].Value}# was 12 Nm: ask\n{m.Value}" : m.Value));

    public static string BlankLines(string path, string text, Dice dice) =>
        InData(path, text, (data, _) => KeyLine().Replace(data, m => dice.OneIn(8) ? "\n" + m.Value : m.Value));

    public static string Quotes(string path, string text, Dice dice) => Edited(path, text, root => Texts(root)
        .Where(t => t.At.Text == t.Text && !t.Text.Any(c => c is '"' or '\'' or '\\' or '\n') && dice.OneIn(4))
        .Select(t => (t.At.Span, dice.OneIn(2) ? $"\"{t.Text}\"" : $"'{t.Text}'")));

    public static string Units(string path, string text, Dice dice) => Edited(path, text, root => Texts(root)
        .Where(t => t.At.Text == t.Text && QuantityReader.Tidied(t.Text) is not null && dice.OneIn(2))
        .Select(t => (t.At.Span, Respelled(t.Text, dice))));

    public static string Wrapped(string path, string text, Dice dice) => Edited(path, text, root => Blocked(root)
        .Where(e => e.Value is DataText t && t.At.Text == t.Text && Plain().IsMatch(t.Text) && dice.OneIn(3))
        .Select(e => (e.Value.At.Span, e.Value.At.Text.Replace(" ", "\n" + new string(' ', Column(e.Key.At) + 2), StringComparison.Ordinal))));

    public static string Blocks(string path, string text, Dice dice) => Edited(path, text, root => Blocked(root)
        .Where(e => e.Value is DataMap { Entries.Length: > 0 } m && IsFlow(m) && dice.OneIn(2))
        .Select(e => (new TextSpan(e.Key.At.Span.End + 1, e.Value.At.Span.End), string.Concat(((DataMap)e.Value).Entries.Select(inner => Line(e, $"{inner.Key.At.Text}: {inner.Value.At.Text}"))))));

    public static string ListBlocks(string path, string text, Dice dice) => Edited(path, text, root => Blocked(root)
        .Where(e => e.Value is DataList { Items.Length: > 0 } l && IsFlow(l) && dice.OneIn(2))
        .Select(e => (new TextSpan(e.Key.At.Span.End + 1, e.Value.At.Span.End), string.Concat(((DataList)e.Value).Items.Select(inner => Line(e, $"- {inner.At.Text}"))))));

    /// <summary>Maps in lines, whose values are single words or numbers, between braces.</summary>
    public static string Flow(string path, string text, Dice dice) => Edited(path, text, root => Blocked(root)
        .Where(e => e.Value is DataMap m && !IsFlow(m) && m.Entries.All(i => i.Value is DataText t && Flowing().IsMatch(t.At.Text)) && !m.At.Text.Contains('#', StringComparison.Ordinal) && dice.OneIn(2))
        .Select(e => (new TextSpan(e.Key.At.Span.End + 1, e.Value.At.Span.End), $" {{{string.Join(", ", ((DataMap)e.Value).Entries.Select(i => $"{i.Key.At.Text}: {i.Value.At.Text}"))}}}")));

    /// <summary>Two neighbours of a map change places, with the comments between them left where they are.</summary>
    public static string KeyOrder(string path, string text, Dice dice)
    {
        for (var time = 0; time < 8; time++)
            text = Edited(path, text, root => Maps(root).Where(m => m.Entries.Length > 1).ToList() is { Count: > 0 } maps && dice.Of(maps) is var map
                && dice.Below(map.Entries.Length - 1) is var at && map.Entries[at] is var first && map.Entries[at + 1] is var second
                ? [(Span(first), Written(second)), (Span(second), Written(first))]
                : []);
        return text;
    }

    private static string Line(DataEntry under, string written) => $"\n{new string(' ', Column(under.Key.At) + 2)}{written}";

    private static TextSpan Span(DataEntry entry) => entry.Key.At.Span.Cover(entry.Value.At.Span);

    private static string Written(DataEntry entry) => new Location(entry.Key.At.Source, Span(entry)).Text;

    private static int Column(Location at) => at.Start.Column - 1;

    private static bool IsFlow(DataNode node) => node.At.Text.Length > 0 && node.At.Text[0] is '{' or '[';

    private static string Respelled(string text, Dice dice)
    {
        foreach (var unit in UnitTable.All.OrderByDescending(u => u.Symbol.Length))
            if (Regex.IsMatch(text, $@"(?<=\d ){Regex.Escape(unit.Symbol)}(?=$| )") && unit.Spellings.Where(s => !s.Any(c => c is '"' or '\'')).ToList() is { Count: > 0 } others)
                return Regex.Replace(text, $@"(?<=\d ){Regex.Escape(unit.Symbol)}(?=$| )", dice.Of(others));
        return text;
    }

    private static IEnumerable<DataText> Texts(DataNode node) => node switch
    {
        DataMap map => map.Entries.Where(e => !ProseKeys.Has(e.Key.Value)).SelectMany(e => Texts(e.Value)),
        DataList list => list.Items.SelectMany(Texts),
        DataText text => [text],
        _ => [],
    };

    private static IEnumerable<DataMap> Maps(DataNode node) => node switch
    {
        DataMap map => map.Entries.SelectMany(e => Maps(e.Value)).Prepend(map),
        DataList list => list.Items.SelectMany(Maps),
        _ => [],
    };

    /// <summary>Entries that have lines of their own.</summary>
    private static IEnumerable<DataEntry> Blocked(DataNode node) => node is DataMap map && !IsFlow(map) ? map.Entries.SelectMany(e => Blocked(e.Value).Prepend(e)) : [];

    private static string Edited(string path, string text, Func<DataMap, IEnumerable<(TextSpan At, string By)>> edits) => InData(path, text, (data, source) =>
    {
        var root = YamlTree.Read(new SourceText(path, source), new TextSpan(0, source.Length), new FindingList());
        if (root is null)
            return data;
        var last = source.Length;
        foreach (var (at, by) in edits(root).OrderByDescending(e => e.At.Start).ToList())
            if (at.End <= last)
                (source, last) = (source[..at.Start] + by + source[at.End..], at.Start);
        return source;
    });

    /// <summary>The data of a file with line feeds alone; what stands in a procedure behind it stays.</summary>
    private static string InData(string path, string text, Func<string, string, string> change)
    {
        if (text.Contains('\r', StringComparison.Ordinal) || text.StartsWith('\uFEFF'))
            return text;
        if (!path.EndsWith(".md", StringComparison.Ordinal))
            return change(text, text);
        var end = text.IndexOf("\n---", StringComparison.Ordinal) + 1;
        var start = text.IndexOf('\n', StringComparison.Ordinal) + 1;
        return text[..start] + change(text[start..end], text[start..end]) + text[end..];
    }

    [GeneratedRegex(@"^( *)[a-z][\w-]*:(?= |$)", RegexOptions.Multiline)]
    private static partial Regex KeyLine();

    [GeneratedRegex(@"\A[\p{L}][\p{L}\p{M}]+(?: [\p{L}][\p{L}\p{M}]+)+\z")]
    private static partial Regex Plain();

    [GeneratedRegex(@"\A[^{}\[\],#""'\n:]+\z")]
    private static partial Regex Flowing();
}
