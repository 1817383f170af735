namespace Witnessmark.Language.Findings;

/// <summary>
/// Words that differ in capitals, hyphens, low lines and blanks alone: <c>Brake_Stack</c> is <c>brake-stack</c>. A letter or a
/// digit more or less may be another thing, and is only asked about (<see cref="NearMiss"/>).
/// </summary>
public static class SameLetters
{
    /// <summary>The one known word with these letters and digits in this order; null when there is none, or more than one.</summary>
    public static string? Only(string written, IEnumerable<string> known)
    {
        var letters = Letters(written);
        if (letters.Length == 0)
            return null;
        var same = known.Distinct(StringComparer.Ordinal).Where(k => Letters(k) == letters).Take(2).ToList();
        return same is [var only] && only != written ? only : null;
    }

    private static string Letters(string word) => string.Concat(word.Where(c => c is not ('-' or '_' or ' '))).ToLowerInvariant();
}
