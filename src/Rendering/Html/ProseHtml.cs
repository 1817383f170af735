using System.Collections.Immutable;
using System.Text;
using System.Text.RegularExpressions;
using Witnessmark.Language.Model;

namespace Witnessmark.Rendering.Html;

/// <summary>Written text as markup. The tree knows no raw HTML, and every word is escaped here.</summary>
internal static partial class ProseHtml
{
    private const int SectionLevel = 2;

    public static RawHtml Inlines(ImmutableArray<Inline> text) => Inlines(text, words => words);

    /// <param name="words">Applied to plain words before they are escaped: fills parameters in.</param>
    public static RawHtml Inlines(ImmutableArray<Inline> text, Func<string, string> words)
    {
        var html = new StringBuilder();
        foreach (var inline in text)
            Write(html, inline, words);
        return new RawHtml(html.ToString());
    }

    public static RawHtml Blocks(ImmutableArray<Block> blocks) => Blocks(blocks, words => words);

    /// <param name="words">As for <see cref="Inlines(ImmutableArray{Inline}, Func{string, string})"/>.</param>
    public static RawHtml Blocks(ImmutableArray<Block> blocks, Func<string, string> words)
    {
        var html = new StringBuilder();
        foreach (var block in blocks)
            Write(html, block, words);
        return new RawHtml(html.ToString());
    }

    private static void Write(StringBuilder html, Inline inline, Func<string, string> words)
    {
        switch (inline)
        {
            case PlainText plain:
                html.Append(Escape.Text(words(plain.Text)));
                break;
            case CodeText code:
                html.Append("<code>").Append(Escape.Text(words(code.Text))).Append("</code>");
                break;
            case StrongText strong:
                Wrap(html, "strong", strong.Inner, words);
                break;
            case LeaningText leaning:
                // no slanted type: it is read slower (CR-177605); emphasis is weight
                Wrap(html, "em", leaning.Inner, words);
                break;
            case LinkText link:
                html.Append("<a href=\"").Append(Escape.Text(Page(link.Target))).Append("\">").Append(Inlines(link.Inner, words).Markup).Append("</a>");
                break;
            case ImageText image:
                html.Append("<span class=\"picture\">").Append(Escape.Text($"{image.Description} ({image.Target})")).Append("</span>");
                break;
            case LineBreak:
                // a line that ends in the file need not end on paper
                html.Append('\n');
                break;
        }
    }

    private static void Wrap(StringBuilder html, string tag, ImmutableArray<Inline> inner, Func<string, string> words) =>
        html.Append('<').Append(tag).Append('>').Append(Inlines(inner, words).Markup).Append("</").Append(tag).Append('>');

    private static void Write(StringBuilder html, Block block, Func<string, string> words)
    {
        switch (block)
        {
            case Paragraph paragraph:
                html.Append("<p>").Append(Inlines(paragraph.Text, words).Markup).Append("</p>\n");
                break;
            case BulletList list:
                html.Append("<ul>");
                foreach (var bullet in list.Bullets)
                    html.Append("<li>").Append(Inlines(bullet, words).Markup).Append("</li>");
                html.Append("</ul>\n");
                break;
            case TextTable table:
                Write(html, table, words);
                break;
            case SubHeading heading:
                Write(html, heading, words);
                break;
            case CodeBlock code:
                // a long line scrolls, with the keys too
                html.Append("<pre tabindex=\"0\"><code>").Append(Escape.Text(code.Text)).Append("</code></pre>\n");
                break;
        }
    }

    /// <summary>A page beside this one is named by its file, so that the link also leads there on a git host.</summary>
    private static string Page(string target) => FileBeside().Replace(target, "$1.html$2");

    private static void Write(StringBuilder html, SubHeading heading, Func<string, string> words)
    {
        var tag = heading.Level > SectionLevel ? "h3" : "h2";
        html.Append('<').Append(tag).Append(" id=\"").Append(Escape.Text(StepName.Slug(heading.Text.Plain()))).Append("\">").Append(Inlines(heading.Text, words).Markup).Append("</").Append(tag).Append(">\n");
    }

    private static void Write(StringBuilder html, TextTable table, Func<string, string> words)
    {
        html.Append("<table><thead><tr>");
        foreach (var cell in table.Head)
            html.Append("<th scope=\"col\">").Append(Inlines(cell, words).Markup).Append("</th>");
        html.Append("</tr></thead><tbody>");
        foreach (var row in table.Rows)
        {
            html.Append("<tr>");
            for (var i = 0; i < row.Length; i++)
                // a phone stands the cells one below the other, each behind the head of its column
                html.Append("<td data-head=\"").Append(Escape.Text(i < table.Head.Length ? table.Head[i].Plain() : "")).Append("\">").Append(Inlines(row[i], words).Markup).Append("</td>");
            html.Append("</tr>");
        }
        html.Append("</tbody></table>\n");
    }

    [GeneratedRegex(@"^([\w-]+)\.md(#.*)?$")]
    private static partial Regex FileBeside();
}
