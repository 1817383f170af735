using System.Collections.Immutable;

namespace Witnessmark.Rendering.Figures;

/// <summary>
/// How wide a bold text prints, from the widths that Liberation Sans Bold shares with Arial and Helvetica Bold. Signs that are
/// not in the table count as wide, so that what is fitted with it fits. tests/Browser.Tests holds it against a real browser.
/// </summary>
internal static class TextWidth
{
    /// <summary>From line to line of the smallest text, in mm.</summary>
    public const double Leading = 4.9;

    /// <summary>Lines are not broken at a blank that keeps a number and its unit together.</summary>
    private static readonly char[] Blanks = [' ', '\n', '\r', '\t'];

    private const int First = ' ';
    private const int Latin = 0x250;
    private const string Ellipsis = "…";
    private const double Wide = 0.8;
    private const double Widest = 1.1;

    /// <summary>Thousandths of the size, from the space to the tilde.</summary>
    private static readonly ImmutableArray<int> Widths =
    [
        278, 333, 474, 556, 556, 889, 722, 238, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 333, 333, 584, 584, 584, 611,
        975, 722, 722, 722, 722, 667, 611, 778, 722, 278, 556, 722, 611, 833, 722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 333, 278, 333, 584, 556,
        333, 556, 611, 556, 611, 556, 333, 611, 611, 278, 278, 556, 278, 889, 611, 611, 611, 611, 389, 556, 333, 611, 556, 778, 556, 556, 500, 389, 280, 389, 584,
    ];

    /// <summary>In mm.</summary>
    public static double Of(string text, double size = Svg.Floor) => text.Sum(Em) * size;

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

    private static double Em(char c) => c switch
    {
        >= ' ' and <= '~' => Widths[c - First] / 1000.0,
        '\u00A0' or '·' => 0.3,
        '×' or '±' or '−' or '→' => c == '→' ? 1 : 0.6,
        '°' => 0.4,
        '…' => 1,
        _ => c < Latin ? Wide : Widest,
    };
}
