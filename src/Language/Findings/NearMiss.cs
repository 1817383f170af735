namespace Witnessmark.Language.Findings;

/// <summary>The word that was probably meant, for "did you mean".</summary>
public static class NearMiss
{
    private const int LongestWord = 64;

    /// <summary>The known word nearest to <paramref name="written"/>, or null when none is near enough to be meant.</summary>
    public static string? Of(string written, IEnumerable<string> known)
    {
        if (written.Length is 0 or > LongestWord)
            return null;
        var allowed = Math.Max(1, written.Length / 3);
        return known
            .Where(k => k.Length <= LongestWord && Math.Abs(k.Length - written.Length) <= allowed)
            .Select(k => (Word: k, Distance: string.Equals(written, k, StringComparison.OrdinalIgnoreCase) ? 0 : Distance(written, k)))
            // at least one letter must be right
            .Where(c => c.Distance <= allowed && c.Distance < Math.Max(c.Word.Length, written.Length))
            // of two that are as near, a wrong letter is likelier than a lost one, and the first letter is seldom wrong
            .OrderBy(c => c.Distance)
            .ThenBy(c => c.Word == written ? 0 : 1)
            .ThenBy(c => Math.Abs(c.Word.Length - written.Length))
            .ThenBy(c => c.Word.Length > 0 && c.Word[0] == written[0] ? 0 : 1)
            .ThenBy(c => c.Word, StringComparer.Ordinal)
            .Select(c => c.Word)
            .FirstOrDefault();
    }

    /// <summary>Letters to insert, drop, change or swap with their neighbour.</summary>
    private static int Distance(string a, string b)
    {
        var rows = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
            rows[i, 0] = i;
        for (var j = 0; j <= b.Length; j++)
            rows[0, j] = j;
        for (var i = 1; i <= a.Length; i++)
            for (var j = 1; j <= b.Length; j++)
            {
                var change = a[i - 1] == b[j - 1] ? 0 : 1;
                rows[i, j] = Math.Min(Math.Min(rows[i - 1, j] + 1, rows[i, j - 1] + 1), rows[i - 1, j - 1] + change);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                    rows[i, j] = Math.Min(rows[i, j], rows[i - 2, j - 2] + 1);
            }
        return rows[a.Length, b.Length];
    }
}
