using System.Text.RegularExpressions;

namespace Witnessmark.Comparing;

/// <param name="EndsClause">A stop, comma or the end of the text follows.</param>
/// <param name="StandsAlone">Nothing follows that the word could belong to: the end of a clause, or <c>and</c>.</param>
internal readonly record struct TextWord(string Text, bool IsNumber, bool EndsClause, bool StandsAlone);

/// <summary>A sentence as words; a number is one word with its sign, its decimals and its unit.</summary>
internal static partial class TextWords
{
    private static readonly string[] Joins = ["and", "or", "to", "y", "o"];

    public static TextWord[] Of(string text)
    {
        var found = Word().Matches(text);
        var words = new TextWord[found.Count];
        for (var i = 0; i < found.Count; i++)
        {
            var end = found[i].Index + found[i].Length;
            var last = i + 1 == found.Count;
            var clause = last || text[end..found[i + 1].Index].Trim().Length > 0;
            var number = found[i].Value.Any(char.IsDigit);
            words[i] = new TextWord(number ? found[i].Value.Replace(" ", "", StringComparison.Ordinal) : found[i].Value, number, clause, clause || Joins.Contains(found[i + 1].Value, StringComparer.OrdinalIgnoreCase));
        }
        return words;
    }

    /// <summary>Whether two words are one, but for one letter of a long one.</summary>
    public static bool AreSpellings(string a, string b)
    {
        const int longEnough = 6;
        if (a.Equals(b, StringComparison.OrdinalIgnoreCase))
            return true;
        if (Math.Min(a.Length, b.Length) < longEnough || a.Concat(b).Any(char.IsDigit))
            return false;
        var head = a.Zip(b).TakeWhile(p => p.First == p.Second).Count();
        var tail = a.Reverse().Zip(b.Reverse()).TakeWhile(p => p.First == p.Second).Count();
        return head + tail >= Math.Max(a.Length, b.Length) - 1;
    }

    // units as they are written in prose; what is missing here is a word behind a number
    [GeneratedRegex(@"[-+±−]?\d+(?:[.,]\d+)*(?:\s?(?:mm|cm|µm|km|m|N·m|lbf·ft|bar|MPa|kPa|Pa|psi|°C|degC|deg|kg|g|t|mL|L|ms|s|min|h|%|kN|N|rpm|ft|lb|V|A)(?![\p{L}·]))?|[\p{L}\p{M}'’]+")]
    private static partial Regex Word();
}
