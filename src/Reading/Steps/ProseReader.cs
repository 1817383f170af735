using System.Collections.Immutable;
using Markdig.Extensions.Tables;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Block = Witnessmark.Language.Model.Block;
using Inline = Witnessmark.Language.Model.Inline;
using MdBlock = Markdig.Syntax.Block;
using MdCode = Markdig.Syntax.CodeBlock;

namespace Witnessmark.Reading.Steps;

/// <summary>Free text: paragraphs, lists of bullets, tables. What a sheet cannot print is a finding.</summary>
internal sealed class ProseReader(SourceText source, FindingList findings)
{
    private readonly InlineReader _inlines = new(source, findings);

    public InlineReader Inlines => _inlines;

    /// <summary>Null for what is no prose; then there is a finding, or it is nothing at all.</summary>
    public Block? Read(MdBlock block)
    {
        var at = source.AtOf(block);
        switch (block)
        {
            case ParagraphBlock paragraph:
                return new Paragraph(_inlines.Read(paragraph), at);
            case Table table:
                return Table(table, at);
            case ListBlock { IsOrdered: false } list:
                return new BulletList([.. list.OfType<ListItemBlock>().Select(Bullet)], at);
            case ThematicBreakBlock or LinkReferenceDefinitionGroup or BlankLineBlock:
                return null;
            default:
                findings.Add(Refuse(block, at));
                return null;
        }
    }

    /// <summary>The text of a bullet; what else stands in the bullet is a finding.</summary>
    public ImmutableArray<Inline> Bullet(ListItemBlock item)
    {
        if (item.Count == 0)
            return [];
        for (var i = 1; i < item.Count; i++)
            if (item[i] is var deeper and not (LinkReferenceDefinitionGroup or BlankLineBlock))
                findings.Add(deeper is HtmlBlock ? TextFindings.RawHtml(source.AtOf(deeper)) : TextFindings.TooDeep(source.AtOf(deeper)));
        if (item[0] is ParagraphBlock text)
            return _inlines.Read(text);
        findings.Add(Refuse(item[0], source.AtOf(item[0])));
        return [];
    }

    /// <summary>Whether a bullet is one run of letters, in which nothing can be found.</summary>
    public static bool IsPlain(ListItemBlock item) => item is [ParagraphBlock { Inline.FirstChild: LiteralInline { NextSibling: null } }];

    private TextTable Table(Table table, Location at)
    {
        var rows = table.OfType<TableRow>().ToLookup(r => r.IsHeader, Cells);
        return new TextTable(rows[true].FirstOrDefault([]), [.. rows[false]], at);
    }

    private ImmutableArray<ImmutableArray<Inline>> Cells(TableRow row) => [.. row.OfType<TableCell>().Select(_inlines.Read)];

    private static Finding Refuse(MdBlock block, Location at) => block switch
    {
        HtmlBlock => TextFindings.RawHtml(at),
        FencedCodeBlock => TextFindings.NotPrinted(at, "A block of code", "Write it as text, or as a table."),
        MdCode => TextFindings.NotPrinted(at, "A text indented so far", "Facts and text of a step stand at four spaces, other text at the edge."),
        QuoteBlock => MessageFindings.InTheMiddle(at),
        _ => TextFindings.TooDeep(at),
    };
}
