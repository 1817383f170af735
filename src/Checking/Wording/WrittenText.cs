using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Checking.Wording;

/// <summary>Written words without their Markdown, that still know where each letter stands.</summary>
internal readonly struct WrittenText
{
    private readonly ImmutableArray<Inline> _inlines;
    private readonly Location _at;

    private WrittenText(string text, ImmutableArray<Inline> inlines, Location at)
    {
        Text = text;
        _inlines = inlines;
        _at = at;
    }

    public string Text { get; }

    public static WrittenText Of(Located<string> text) => new(text.Value, [], text.At);

    public static WrittenText Of(ImmutableArray<Inline> text) => new(text.Plain(), text, default);

    /// <summary>Where a part of the text stands; the whole run when signs were taken out of it.</summary>
    public Location Place(int start, int end)
    {
        var runs = Runs();
        var first = runs.Last(r => r.Start <= start);
        var last = runs.Last(r => r.Start < Math.Max(end, 1));
        var from = IsExact(first) ? first.At.Span.Start + start - first.Start : first.At.Span.Start;
        var to = IsExact(last) ? last.At.Span.Start + end - last.Start : last.At.Span.End;
        return first.At.Source.At(from, to);
    }

    private static bool IsExact((int Start, string Text, Location At) run) => run.At.Span.Length == run.Text.Length;

    /// <summary>The words piece by piece, each with where it begins in the text. Only findings ask for them.</summary>
    private List<(int Start, string Text, Location At)> Runs()
    {
        if (_inlines.IsEmpty)
            return [(0, Text, _at)];
        var runs = new List<(int, string, Location)>();
        var start = 0;
        foreach (var (words, at) in _inlines.SelectMany(Leaves))
        {
            runs.Add((start, words, at));
            start += words.Length;
        }
        return runs;
    }

    private static IEnumerable<(string Words, Location At)> Leaves(Inline inline) => inline switch
    {
        StrongText s => s.Inner.SelectMany(Leaves),
        LeaningText l => l.Inner.SelectMany(Leaves),
        LinkText l => l.Inner.SelectMany(Leaves),
        PlainText t => [(t.Text, t.At)],
        CodeText c => [(c.Text, c.At)],
        ImageText i => [(i.Description, i.At)],
        _ => [(" ", inline.At)],
    };
}
