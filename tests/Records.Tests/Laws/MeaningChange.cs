using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Witnessmark.Language.Text;

namespace Witnessmark.Records.Tests.Laws;

/// <summary>One place of one file with another meaning, and the procedures that mean something else by it.</summary>
/// <param name="Kind">What is changed, to count by.</param>
internal sealed partial record MeaningChange(string Kind, string Path, ImmutableArray<(TextSpan At, string By)> Edits, ImmutableArray<string> Procedures)
{
    public static MeaningChange Of(string kind, Location at, string by, params ImmutableArray<string> procedures) =>
        new(kind, at.Source.Path, [(at.Span, by)], procedures);

    public string Words(ImmutableSortedDictionary<string, string> texts) => string.Join(" and ", Edits.Select(e =>
        string.Create(CultureInfo.InvariantCulture, $"{Kind}: `{texts[Path][e.At.Start..e.At.End]}` became `{e.By}` in {Path}, line {texts[Path][..e.At.Start].Count(c => c == '\n') + 1}")));

    public ImmutableSortedDictionary<string, string> In(ImmutableSortedDictionary<string, string> texts) =>
        texts.SetItem(Path, Edits.OrderByDescending(e => e.At.Start).Aggregate(texts[Path], (text, e) => text[..e.At.Start] + e.By + text[e.At.End..]));

    /// <summary>Two pieces of one file change places; nothing where both say the same.</summary>
    public static IEnumerable<MeaningChange> Swapped(string kind, Location first, Location second, params ImmutableArray<string> procedures) =>
        first.Text == second.Text ? [] : [new MeaningChange(kind, first.Source.Path, [(first.Span, second.Text), (second.Span, first.Text)], procedures)];

    /// <summary>Every number in a piece of text with its last digit another, and with one decimal more: the digits say the resolution.</summary>
    public static IEnumerable<MeaningChange> Numbers(string kind, Location at, params ImmutableArray<string> procedures)
    {
        foreach (var number in Number().Matches(at.Text).Cast<Match>())
        {
            var digit = at.Part(number.Index + number.Length - 1, number.Index + number.Length);
            yield return Of(kind, digit, ((digit.Text[0] - '0' + 1) % 10).ToString(CultureInfo.InvariantCulture), procedures);
            if (number.Value.Contains('.', StringComparison.Ordinal) && number.Value.Count(c => c == '.') == 1)
                yield return Of($"{kind}, one digit more", at.Part(number.Index, number.Index + number.Length), number.Value + "0", procedures);
        }
    }

    /// <summary>Every word in a piece of text as another word, and the piece without it.</summary>
    public static IEnumerable<MeaningChange> EachWord(string kind, Location at, params ImmutableArray<string> procedures) =>
        Word().Matches(at.Text).Select(m => Of(kind, at.Part(m.Index, m.Index + m.Length), $"{m.Value}ly", procedures));

    /// <summary>The whole line or lines that a piece stands on.</summary>
    public static MeaningChange Without(string kind, Location at, params ImmutableArray<string> procedures)
    {
        var text = at.Source.Content;
        var start = text.LastIndexOf('\n', Math.Max(0, at.Span.Start - 1)) + 1;
        var end = text.IndexOf('\n', at.Span.End) + 1;
        return Of(kind, at.Source.At(start, end == 0 ? text.Length : end), "", procedures);
    }

    [GeneratedRegex(@"\d+(?:\.\d+)*")]
    private static partial Regex Number();

    [GeneratedRegex(@"\p{L}{2,}")]
    private static partial Regex Word();
}
