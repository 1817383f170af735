using Markdig;
using Markdig.Syntax;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Faults;

namespace Witnessmark.Reading.Steps;

/// <summary>The text of a procedure as a Markdown tree with exact places.</summary>
internal static class MarkdownText
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().UsePreciseSourceLocation().UsePipeTables().Build();

    /// <param name="body">Where the text begins; what stands before it is read as one blank line, so that places stay those of the file.</param>
    /// <returns>Null when it cannot be read; then there is a finding.</returns>
    public static MarkdownDocument? Parse(SourceText source, int body, FindingList findings)
    {
        var text = string.Create(source.Content.Length, (source.Content, body), static (text, from) =>
        {
            from.Content.CopyTo(text);
            text[..from.body].Fill(' ');
            if (from.body > 0)
                text[from.body - 1] = '\n';
        });
        try
        {
            return Markdown.Parse(text, Pipeline);
        }
        // the parser gives up at its limit of nesting with this kind of exception, and without a place
        catch (ArgumentException)
        {
            return Unreadable(source, body, "The text is nested into itself so often that it cannot be read.", "Look for a long run of `>`, `*` or `[` and take it apart.", findings);
        }
        // a fault of the parser is no reason to lose the other files
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            return Unreadable(source, body, $"The text makes the Markdown reader fail ({e.GetType().Name}).", "Take the latest change back, then put it in again piece by piece until it fails, and report that piece.", findings);
        }
    }

    private static MarkdownDocument? Unreadable(SourceText source, int body, string found, string putRight, FindingList findings)
    {
        findings.Add(StepFaults.TextUnreadable, source.At(body, body), found, "A text that cannot be read for certain is not printed.", putRight);
        return null;
    }

    /// <summary>The place of a block or inline. The parser counts ends inclusive, and some blocks take their line end with them.</summary>
    public static Location AtOf(this SourceText source, MarkdownObject part)
    {
        var start = Math.Clamp(part.Span.Start, 0, source.Content.Length);
        var end = Math.Clamp(part.Span.End + 1, start, source.Content.Length);
        while (end > start && char.IsWhiteSpace(source.Content[end - 1]))
            end--;
        return source.At(start, end);
    }

    /// <summary>The words of a bullet without its dash; of a bullet that has none, all of it.</summary>
    public static Location WordsOf(this SourceText source, ListItemBlock bullet) => source.AtOf(bullet is [ParagraphBlock words, ..] ? words : bullet);
}
