using System.Text;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Comparisons;

/// <summary>Two texts as one: words that are gone struck through, words that came underlined. Read in black and white, and by ear.</summary>
internal static class Redline
{
    // a table of words by words; texts beyond this are shown whole, one behind the other
    private const int MostWords = 400;

    public static RawHtml Of(string? old, string? made)
    {
        var (before, after) = (Words(old), Words(made));
        var html = new StringBuilder();
        if (before.Length > MostWords || after.Length > MostWords)
        {
            Mark(html, "del", before);
            Mark(html, "ins", after);
            return new RawHtml(html.ToString());
        }
        var common = Common(before, after);
        var (i, j) = (0, 0);
        foreach (var (x, y) in common.Append((before.Length, after.Length)))
        {
            Mark(html, "del", before[i..x]);
            Mark(html, "ins", after[j..y]);
            if (x < before.Length)
                html.Append(Space(html)).Append(Escape.Text(before[x]));
            (i, j) = (x + 1, y + 1);
        }
        return new RawHtml(html.ToString());
    }

    private static void Mark(StringBuilder html, string element, string[] words)
    {
        if (words.Length > 0)
            html.Append(Space(html)).Append('<').Append(element).Append('>').Append(Escape.Text(string.Join(' ', words))).Append("</").Append(element).Append('>');
    }

    private static string Space(StringBuilder html) => html.Length == 0 ? "" : " ";

    private static string[] Words(string? text) => (text ?? "").Split([' ', '\n', '\r', '\t'], StringSplitOptions.RemoveEmptyEntries);

    /// <summary>Places of the longest run of words that both have in one order.</summary>
    private static List<(int Old, int New)> Common(string[] a, string[] b)
    {
        var length = new int[a.Length + 1, b.Length + 1];
        for (var i = a.Length - 1; i >= 0; i--)
            for (var j = b.Length - 1; j >= 0; j--)
                length[i, j] = a[i] == b[j] ? length[i + 1, j + 1] + 1 : Math.Max(length[i + 1, j], length[i, j + 1]);
        var pairs = new List<(int Old, int New)>();
        for (var (i, j) = (0, 0); i < a.Length && j < b.Length;)
            if (a[i] == b[j])
                pairs.Add((i++, j++));
            else if (length[i + 1, j] >= length[i, j + 1])
                i++;
            else
                j++;
        return pairs;
    }
}
