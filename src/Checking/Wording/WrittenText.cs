using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Checking.Wording;

/// <summary>Written words without their Markdown, that still know where each letter stands.</summary>
internal sealed class WrittenText
{
    private readonly ImmutableArray<(int Start, string Text, Location At)> _runs;

    private WrittenText(ImmutableArray<(int Start, string Text, Location At)> runs)
    {
        _runs = runs;
        Text = string.Concat(runs.Select(r => r.Text));
    }

    public string Text { get; }

    public static WrittenText Of(Located<string> text) => new([(0, text.Value, text.At)]);

    public static WrittenText Of(ImmutableArray<Inline> text)
    {
        var runs = ImmutableArray.CreateBuilder<(int, string, Location)>();
        var start = 0;
        foreach (var (words, at) in text.SelectMany(Leaves))
        {
            runs.Add((start, words, at));
            start += words.Length;
        }
        return new WrittenText(runs.ToImmutable());
    }

    /// <summary>Where a part of the text stands; the whole run when signs were taken out of it.</summary>
    public Location Place(int start, int end)
    {
        var first = _runs.Last(r => r.Start <= start);
        var last = _runs.Last(r => r.Start < Math.Max(end, 1));
        var from = IsExact(first) ? first.At.Span.Start + start - first.Start : first.At.Span.Start;
        var to = IsExact(last) ? last.At.Span.Start + end - last.Start : last.At.Span.End;
        return first.At.Source.At(from, to);
    }

    private static bool IsExact((int Start, string Text, Location At) run) => run.At.Span.Length == run.Text.Length;

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
