using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Markdig.Extensions.Tables;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Inline = Witnessmark.Language.Model.Inline;
using MdInline = Markdig.Syntax.Inlines.Inline;

namespace Witnessmark.Reading.Steps;

/// <summary>Running text without its Markdown. Raw HTML and links out of the workshop stop here.</summary>
internal sealed partial class InlineReader(SourceText source, FindingList findings)
{
    /// <summary>Bold in italics in a link is three.</summary>
    private const int Deepest = 8;

    private readonly HashSet<string> _open = new(StringComparer.OrdinalIgnoreCase);

    public ImmutableArray<Inline> Read(LeafBlock block) => From(block.Inline?.FirstChild);

    /// <summary>From one inline to the last beside it.</summary>
    public ImmutableArray<Inline> From(MdInline? first, int depth = 0)
    {
        if (first is null)
            return [];
        if (depth > Deepest)
        {
            findings.Add(TextFindings.TooDeep(source.AtOf(first)));
            return [];
        }
        var read = ImmutableArray.CreateBuilder<Inline>(CountFrom(first));
        for (var inline = first; inline is not null; inline = inline.NextSibling)
            Add(inline, read, depth);
        return read.DrainToImmutable();
    }

    private static int CountFrom(MdInline first)
    {
        var count = 0;
        for (var inline = first; inline is not null; inline = inline.NextSibling)
            count++;
        return count;
    }

    private void Add(MdInline inline, ImmutableArray<Inline>.Builder read, int depth)
    {
        var at = source.AtOf(inline);
        switch (inline)
        {
            case HtmlInline html:
                RefuseHtml(html.Tag, at);
                break;
            case EmphasisInline emphasis:
                read.Add(Emphasis(emphasis, at, depth));
                break;
            case AutolinkInline link:
                AddLink([new PlainText(link.Url, at)], link.IsEmail ? $"mailto:{link.Url}" : link.Url, at, read);
                break;
            case LinkInline { IsImage: true } image:
                AddImage(image, at, read, depth);
                break;
            case LinkInline link:
                AddLink(From(link.FirstChild, depth + 1), link.Url ?? "", at, read);
                break;
            case ContainerInline container:
                read.AddRange(From(container.FirstChild, depth + 1));
                break;
            default:
                read.Add(Words(inline, at));
                break;
        }
    }

    private Inline Emphasis(EmphasisInline emphasis, Location at, int depth)
    {
        var inner = From(emphasis.FirstChild, depth + 1);
        return emphasis.DelimiterCount == 2 ? new StrongText(inner, at) : new LeaningText(inner, at);
    }

    /// <summary>What has nothing inside it.</summary>
    private Inline Words(MdInline inline, Location at) => inline switch
    {
        LiteralInline literal => new PlainText(literal.Content.ToString(), new Location(source, new TextSpan(inline.Span.Start, inline.Span.End + 1))),
        HtmlEntityInline entity => new PlainText(entity.Transcoded.ToString(), at),
        CodeInline code => new CodeText(code.Content, at),
        LineBreakInline { IsHard: true } => new LineBreak(at),
        LineBreakInline => new PlainText(" ", at),
        _ => new PlainText(at.Text, at),
    };

    /// <summary>An end tag belongs to its beginning: one cause, one finding.</summary>
    private void RefuseHtml(string tag, Location at)
    {
        var name = TagName.Match(tag).Value;
        if (!tag.StartsWith("</", StringComparison.Ordinal))
            _open.Add(name);
        else if (_open.Remove(name))
            return;
        findings.Add(TextFindings.RawHtml(at));
    }

    private void AddLink(ImmutableArray<Inline> inner, string target, Location at, ImmutableArray<Inline>.Builder read)
    {
        if (LinkTarget.Trouble(source.Path, target) is not { } trouble)
        {
            read.Add(new LinkText(inner, target, at));
            return;
        }
        findings.Add(TextFindings.LinkOutside(at, target, trouble));
        read.AddRange(inner);
    }

    private void AddImage(LinkInline image, Location at, ImmutableArray<Inline>.Builder read, int depth)
    {
        var description = From(image.FirstChild, depth + 1).Plain();
        var target = image.Url ?? "";
        if (LinkTarget.Trouble(source.Path, target) is { } trouble)
            findings.Add(TextFindings.LinkOutside(at, target, trouble));
        else
            read.Add(new ImageText(description, target, at));
    }

    public ImmutableArray<Inline> Read(TableCell cell)
    {
        var read = ImmutableArray.CreateBuilder<Inline>();
        foreach (var block in cell)
            if (block is LeafBlock leaf)
                read.AddRange(Read(leaf));
        return read.ToImmutable();
    }

    [GeneratedRegex("[A-Za-z][A-Za-z0-9-]*")]
    private static partial Regex TagName { get; }
}
