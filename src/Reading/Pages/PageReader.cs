using System.Collections.Immutable;
using Markdig.Syntax;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Steps;
using Block = Witnessmark.Language.Model.Block;
using CodeBlock = Witnessmark.Language.Model.CodeBlock;

namespace Witnessmark.Reading.Pages;

/// <summary>Reads pages of our own: rules, language, what changed. Headings and code are theirs alone; a procedure has neither.</summary>
public static class PageReader
{
    public static ImmutableArray<Block> Read(SourceText source)
    {
        var findings = new FindingList();
        if (MarkdownText.Parse(source, 0, findings) is not { } document)
            return [];
        var prose = new ProseReader(source, findings);
        return [.. document.Select(b => One(b, source, prose)).OfType<Block>()];
    }

    private static Block? One(Markdig.Syntax.Block block, SourceText source, ProseReader prose) => block switch
    {
        HeadingBlock heading => new SubHeading(heading.Level, prose.Inlines.Read(heading), source.AtOf(heading)),
        FencedCodeBlock code => new CodeBlock($"{code.Info} {code.Arguments}".Trim(), code.Lines.ToString(), source.AtOf(code)),
        _ => prose.Read(block),
    };
}
