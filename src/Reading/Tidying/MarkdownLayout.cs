using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Facts;
using Witnessmark.Reading.Steps;

namespace Witnessmark.Reading.Tidying;

/// <summary>Bullets, step numbers, blank lines and the units of facts in the text of a procedure.</summary>
/// <param name="body">Where the text begins, behind the front matter.</param>
internal sealed partial class MarkdownLayout(SourceText source, MarkdownDocument text, int body)
{
    private static readonly ImmutableHashSet<FactWord> Timed = [FactWord.Time, FactWord.Wait, FactWord.Odds, FactWord.Owes];

    private string Content => source.Content;

    /// <summary>Where blanks begin that break a line on paper. In a fact they do not: it has one line.</summary>
    public ImmutableHashSet<int> Breaks =>
    [
        .. text.Descendants<LineBreakInline>().Where(b => b is { IsHard: true, IsBackslash: false } && !InFact(b)).Select(b => Start(b.Span.Start)),
    ];

    public IEnumerable<Edit> Edits()
    {
        var steps = text.OfType<ListBlock>().Where(l => l.IsOrdered).SelectMany(l => l.OfType<ListItemBlock>()).ToList();
        return
        [
            .. text.Descendants<ListBlock>().Where(l => !l.IsOrdered && !Joins(l)).SelectMany(l => l.OfType<ListItemBlock>()).SelectMany(Sign),
            .. steps.SelectMany((step, i) => Number(step, i + 1)),
            .. text.OfType<HeadingBlock>().Select(h => h.Span.Start).Concat(steps.Select(s => s.Span.Start)).SelectMany(BlankLine),
            .. text.Descendants<ListItemBlock>().Select(i => Bullet.Of(source.WordsOf(i))).SelectMany(FactUnits),
        ];
    }

    private IEnumerable<Edit> Sign(ListItemBlock item)
    {
        var at = item.Span.Start;
        if (Content[at] is '*' or '+')
            yield return new Edit(Untidiness.Bullets, TextSpan.Of(at, 1), "-");
    }

    /// <summary>Two lists side by side are two because their signs differ: with one sign they would be one. In a step and a message they are read as one anyway.</summary>
    private static bool Joins(ListBlock list)
    {
        if (list.Parent is QuoteBlock or ListItemBlock { Parent: ListBlock { IsOrdered: true } })
            return false;
        var all = list.Parent!;
        var at = all.IndexOf(list);
        return (at > 0 && all[at - 1] is ListBlock { IsOrdered: false }) || (at + 1 < all.Count && all[at + 1] is ListBlock { IsOrdered: false });
    }

    private IEnumerable<Edit> Number(ListItemBlock step, int number)
    {
        var end = step.Span.Start;
        while (end < Content.Length && char.IsAsciiDigit(Content[end]))
            end++;
        var at = new TextSpan(step.Span.Start, Math.Min(end + 1, Content.Length));
        var by = string.Create(CultureInfo.InvariantCulture, $"{number}.");
        // what belongs to a step stands behind its number: a longer number must not push it out
        var deep = step.Skip(1).All(b => b.Column >= step.Column + by.Length + 1);
        if (source.Slice(at) != by && deep)
            yield return new Edit(Untidiness.StepNumbers, at, by);
    }

    private IEnumerable<Edit> BlankLine(int block)
    {
        var line = Content.LastIndexOf('\n', Math.Max(0, block - 1)) + 1;
        if (line < body || line == 0)
            yield break;
        var before = line < 2 ? 0 : Content.LastIndexOf('\n', line - 2) + 1;
        if (!string.IsNullOrWhiteSpace(Content[before..line]))
            yield return new Edit(Untidiness.BlankLines, TextSpan.Of(line, 0), "\n");
    }

    private static IEnumerable<Edit> FactUnits(Bullet bullet)
    {
        if (bullet is not { Row: { } row, Value: { } value } || !Timed.Contains(row.Word))
            return [];
        return Times().Matches(value.Value).SelectMany(m => Units.Of(value.At.Part(m.Index, m.Index + m.Length)));
    }

    private bool InFact(LineBreakInline broken)
    {
        MarkdownObject? block = broken.Parent;
        while (block is Markdig.Syntax.Inlines.Inline inline)
            block = inline is ContainerInline { ParentBlock: { } leaf } ? leaf : inline.Parent;
        return block is ParagraphBlock { Parent: ListItemBlock { Parent: ListBlock { IsOrdered: false } } item } && !Bullet.Of(source.WordsOf(item)).IsRemark;
    }

    private int Start(int at)
    {
        while (at > 0 && Content[at - 1] is ' ' or '\t')
            at--;
        return at;
    }

    /// <summary>A time or range of times: <c>10 to 15 min</c> of <c>10 to 15 min until the oil is clear</c>, <c>2 h</c> of <c>wheel-nut re-torque after 2 h, 10 h</c>.</summary>
    [GeneratedRegex("(?<=^|, *| after +|% +)(?:from |below |above |up to )?[0-9][^,]*?(?= +until |,|$)")]
    private static partial Regex Times();
}
