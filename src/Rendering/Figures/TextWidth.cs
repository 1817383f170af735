using System.Collections.Immutable;
using Witnessmark.Engineering.Printing;

namespace Witnessmark.Rendering.Figures;

/// <summary>How wide a bold text of a figure prints, and where it is broken or cut to fit.</summary>
internal static class TextWidth
{
    /// <summary>From line to line of the smallest text, in mm.</summary>
    public const double Leading = 4.9;

    /// <summary>Lines are not broken at a blank that keeps a number and its unit together.</summary>
    private static readonly char[] Blanks = [' ', '\n', '\r', '\t'];

    private const string Ellipsis = "…";

    /// <summary>In mm.</summary>
    public static double Of(string text, double size = Svg.Floor) => SansBold.Width(text, size);

    /// <summary>Words on as few lines as are no wider than so many mm; a word that is wider is broken.</summary>
    public static ImmutableArray<string> Wrap(string text, double width)
    {
        var lines = ImmutableArray.CreateBuilder<string>();
        var line = "";
        foreach (var word in text.Split(Blanks, StringSplitOptions.RemoveEmptyEntries).SelectMany(w => Pieces(w, width)))
        {
            if (line.Length > 0 && Of($"{line} {word}") > width)
            {
                lines.Add(line);
                line = "";
            }
            line = line.Length == 0 ? word : $"{line} {word}";
        }
        lines.Add(line);
        return lines.ToImmutable();
    }

    /// <summary>The text on one line; one that is wider than so many mm ends with an ellipsis.</summary>
    public static string Fit(string text, double width) => Fit(text, width, 1)[0];

    /// <summary>As many lines as there may be; where there is more, the last one ends with an ellipsis.</summary>
    public static ImmutableArray<string> Fit(string text, double width, int most)
    {
        var lines = Wrap(text, width);
        if (lines.Length <= most)
            return lines;
        var last = lines[most - 1];
        while (last.Length > 0 && Of(last + Ellipsis) > width)
            last = last[..^(last.Length > 1 && char.IsLowSurrogate(last[^1]) ? 2 : 1)];
        return [.. lines.Take(most - 1), last + Ellipsis];
    }

    private static IEnumerable<string> Pieces(string word, double width)
    {
        while (Of(word) > width && word.Length > 1)
        {
            var taken = 1;
            while (Of(word[..(taken + 1)]) <= width)
                taken++;
            // a pair of surrogates is one sign
            taken += !char.IsHighSurrogate(word[taken - 1]) ? 0 : taken == 1 ? 1 : -1;
            yield return word[..taken];
            word = word[taken..];
        }
        if (word.Length > 0)
            yield return word;
    }
}
