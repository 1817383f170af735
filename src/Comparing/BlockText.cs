using System.Collections.Immutable;
using Witnessmark.Language.Model;

namespace Witnessmark.Comparing;

/// <summary>The words of paragraphs, lists and tables, one behind the other.</summary>
internal static class BlockText
{
    public static string Of(ImmutableArray<Block> blocks) => string.Join(' ', blocks.Select(Of)).Trim();

    private static string Of(Block block) => block switch
    {
        Paragraph p => p.Text.Plain(),
        BulletList list => string.Join(" · ", list.Bullets.Select(b => b.Plain())),
        TextTable table => string.Join(" / ", table.Rows.Prepend(table.Head).Select(r => string.Join(" | ", r.Select(c => c.Plain())))),
        SubHeading heading => heading.Text.Plain(),
        CodeBlock code => code.Text,
        _ => "",
    };
}
