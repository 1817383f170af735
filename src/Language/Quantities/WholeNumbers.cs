using System.Globalization;

namespace Witnessmark.Language.Quantities;

/// <summary>Whole numbers from one to another as a regular expression, leading zeros allowed.</summary>
public static class WholeNumbers
{
    public static string Pattern(int least, int most)
    {
        var pieces = new List<string>();
        for (var low = least; low <= most;)
        {
            var high = Math.Min(most, NextLength(low) - 1);
            Same(Text(low), Text(high), "", pieces);
            low = high + 1;
        }
        return $"0*(?:{string.Join('|', pieces)})";
    }

    /// <summary>Both of one length: cut where their first digits part.</summary>
    private static void Same(string low, string high, string before, List<string> pieces)
    {
        if (low.Length == 0)
            pieces.Add(before);
        else if (low[0] == high[0])
            Same(low[1..], high[1..], before + low[0], pieces);
        else if (low[1..].All(c => c == '0') && high[1..].All(c => c == '9'))
            pieces.Add($"{before}[{low[0]}-{high[0]}]{string.Concat(Enumerable.Repeat("[0-9]", low.Length - 1))}");
        else
            Cut(low, high, before, pieces);
    }

    private static void Cut(string low, string high, string before, List<string> pieces)
    {
        var rest = low.Length - 1;
        var (first, last) = (low[0], high[0]);
        if (low[1..].Any(c => c != '0'))
        {
            Same(low, first + new string('9', rest), before, pieces);
            first++;
        }
        if (high[1..].Any(c => c != '9'))
            last--;
        if (first <= last)
            Same(first + new string('0', rest), last + new string('9', rest), before, pieces);
        if (last != high[0])
            Same(high[0] + new string('0', rest), high, before, pieces);
    }

    private static int NextLength(int number)
    {
        var next = 10;
        while (next <= number)
            next *= 10;
        return next;
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
