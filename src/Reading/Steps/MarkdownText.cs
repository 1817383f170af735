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

    /// <param name="body">Where the text begins; what stands before it is read as blank, so that places stay those of the file.</param>
    /// <returns>Null when it cannot be read; then there is a finding.</returns>
    public static MarkdownDocument? Parse(SourceText source, int body, FindingList findings)
    {
        var text = new string('\n', body) + source.Content[body..];
        try
        {
            return Markdown.Parse(text, Pipeline);
        }
        // the parser gives up at its limit of nesting with this kind and no place
        catch (ArgumentException)
        {
            findings.Add(
                StepFaults.NestedTooDeep,
                source.At(body, body),
                "The text is nested so deeply that it cannot be read.",
                "Nobody can follow lists in lists in lists on a printed sheet.",
                "Take brackets, quotes or lists inside one another apart.");
            return null;
        }
        // a fault of the parser is no reason to lose the other files
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            findings.Add(
                StepFaults.TextUnreadable,
                source.At(body, body),
                $"The text makes the Markdown reader fail ({e.GetType().Name}).",
                "A text that cannot be read for certain is not printed.",
                "Take the latest change back, then put it in again piece by piece until it fails, and send us that piece.");
            return null;
        }
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

    public static Located<string> TextOf(this SourceText source, MarkdownObject part)
    {
        var at = source.AtOf(part);
        return new Located<string>(at.Text, at);
    }
}
