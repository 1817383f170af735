using System.Collections.Immutable;
using Witnessmark.Language.Text;

namespace Witnessmark.Reading.Tidying;

/// <summary>Blanks at the ends of lines, and the end of the last line.</summary>
internal static class Blanks
{
    /// <param name="source">With line feeds alone.</param>
    /// <param name="breaks">Where two blanks at the end of a line break it on paper: a backslash does the same and can be seen.</param>
    public static IEnumerable<Edit> Of(SourceText source, ImmutableHashSet<int> breaks)
    {
        var text = source.Content;
        var last = text.TrimEnd(' ', '\t', '\n').Length;
        for (var end = text.IndexOf('\n'); end >= 0 && end < last; end = text.IndexOf('\n', end + 1))
            if (End(text, end) is var start && start < end)
                yield return new Edit(Untidiness.TrailingBlanks, new TextSpan(start, end), breaks.Contains(start) ? "\\" : "");
        if (last > 0 && text[last..] != "\n")
            yield return new Edit(Untidiness.LastLine, new TextSpan(last, text.Length), "\n");
    }

    private static int End(string text, int end)
    {
        while (end > 0 && text[end - 1] is ' ' or '\t')
            end--;
        return end;
    }
}
