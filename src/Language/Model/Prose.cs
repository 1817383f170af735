using System.Collections.Immutable;
using Witnessmark.Language.Text;

namespace Witnessmark.Language.Model;

/// <summary>Written text without its Markdown: what may be printed, nothing else. Raw HTML never gets here.</summary>
public abstract record Inline(Location At);

public sealed record PlainText(string Text, Location At) : Inline(At);

public sealed record StrongText(ImmutableArray<Inline> Inner, Location At) : Inline(At);

public sealed record LeaningText(ImmutableArray<Inline> Inner, Location At) : Inline(At);

public sealed record CodeText(string Text, Location At) : Inline(At);

/// <param name="Target">Checked by the reader: a path in the workshop, or https.</param>
public sealed record LinkText(ImmutableArray<Inline> Inner, string Target, Location At) : Inline(At);

public sealed record ImageText(string Description, string Target, Location At) : Inline(At);

public sealed record LineBreak(Location At) : Inline(At);

public abstract record Block(Location At);

public sealed record Paragraph(ImmutableArray<Inline> Text, Location At) : Block(At);

public sealed record BulletList(ImmutableArray<ImmutableArray<Inline>> Bullets, Location At) : Block(At);

public sealed record TextTable(ImmutableArray<ImmutableArray<Inline>> Head, ImmutableArray<ImmutableArray<ImmutableArray<Inline>>> Rows, Location At) : Block(At);

/// <summary>A heading in a page about a rule or a word; a procedure's own headings are parts and sections.</summary>
public sealed record SubHeading(int Level, ImmutableArray<Inline> Text, Location At) : Block(At);

/// <param name="Info">What follows the fence: <c>diff procedures/workshop.yaml</c>.</param>
public sealed record CodeBlock(string Info, string Text, Location At) : Block(At);

public static class ProseText
{
    /// <summary>The words alone.</summary>
    public static string Plain(this ImmutableArray<Inline> text) => text switch
    {
        [] => "",
        [var single] => Plain(single),
        _ => string.Concat(text.Select(Plain)),
    };

    private static string Plain(Inline inline) => inline switch
    {
        PlainText t => t.Text,
        CodeText c => c.Text,
        StrongText s => s.Inner.Plain(),
        LeaningText l => l.Inner.Plain(),
        LinkText l => l.Inner.Plain(),
        ImageText i => i.Description,
        LineBreak => " ",
        _ => "",
    };
}
