using System.Collections.Immutable;
using Witnessmark.Language.Model;

namespace Witnessmark.Records.Hashing;

/// <summary>Written text: words, emphasis, links, pictures, breaks. How its Markdown was laid out is gone.</summary>
internal static class ProseCanon
{
    public static Canon Of(ImmutableArray<Block> blocks) => Canon.List(blocks.Select(Of));

    public static Canon Bullets(ImmutableArray<ImmutableArray<Inline>> bullets) => Canon.List(bullets.Select(Of));

    /// <summary>Neighbouring words are joined first, over line breaks too: where a line was wrapped does not count.</summary>
    public static Canon Of(ImmutableArray<Inline> text)
    {
        var runs = new List<Canon>();
        var words = "";
        foreach (var inline in text)
        {
            if (inline is PlainText or LineBreak)
            {
                words += inline is PlainText plain ? plain.Text : " ";
                continue;
            }
            Take();
            runs.Add(Marked(inline));
        }
        Take();
        return Canon.List(runs);

        void Take()
        {
            // a blank beside emphasis is layout as little as one in the middle of words, so its being there is kept
            if (words.Length > 0)
                runs.Add(Canon.Map(("text", Canon.Text(words)), ("open", Edge(words[0])), ("close", Edge(words[^1]))));
            words = "";
        }
    }

    private static Canon? Edge(char c) => Canon.Maybe(char.IsWhiteSpace(c));

    private static Canon Marked(Inline inline) => inline switch
    {
        StrongText s => Canon.Map(("strong", Of(s.Inner))),
        LeaningText l => Canon.Map(("leaning", Of(l.Inner))),
        CodeText c => Canon.Map(("code", Canon.Text(c.Text))),
        LinkText l => Canon.Map(("link", Of(l.Inner)), ("to", Canon.Text(l.Target))),
        ImageText i => Canon.Map(("picture", Canon.Text(i.Description)), ("file", Canon.Text(i.Target))),
        _ => throw new NotSupportedException($"text of shape {inline.GetType().Name} has no canonical form yet"),
    };

    private static Canon Of(Block block) => block switch
    {
        Paragraph p => Canon.Map(("paragraph", Of(p.Text))),
        BulletList b => Canon.Map(("bullets", Bullets(b.Bullets))),
        TextTable t => Canon.Map(("head", Bullets(t.Head)), ("rows", Canon.List(t.Rows.Select(Bullets)))),
        _ => throw new NotSupportedException($"a block of shape {block.GetType().Name} has no canonical form yet"),
    };
}
