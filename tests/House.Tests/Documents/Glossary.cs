using System.Text.RegularExpressions;

namespace Witnessmark.House.Tests.Documents;

/// <param name="Term">As it is headed.</param>
/// <param name="Spanish">What the Spanish sheets say; null where they have no word of their own for it.</param>
internal sealed record GlossaryEntry(string Letter, string Term, string? Spanish, string Meaning);

/// <summary>The page <c>site/pages/glossary.md</c>, entry by entry.</summary>
internal static partial class Glossary
{
    public const string Page = "site/pages/glossary.md";

    public static IReadOnlyList<GlossaryEntry> Read(string page)
    {
        var letter = "";
        var entries = new List<GlossaryEntry>();
        foreach (Match match in Piece().Matches(page.ReplaceLineEndings("\n")))
            if (match.Groups["letter"].Success)
                letter = match.Groups["letter"].Value;
            else
                entries.Add(new GlossaryEntry(letter, match.Groups["term"].Value, match.Groups["es"] is { Success: true } es ? es.Value : null, match.Groups["says"].Value));
        return entries;
    }

    /// <summary>Whether people read the term there: in one word or two, one of it or several.</summary>
    public static bool IsUsed(string term, string text)
    {
        var words = term.Split(' ', '-').Select(word => word.EndsWith('y') ? $"{Regex.Escape(word[..^1])}(?:y|ies)" : $"{Regex.Escape(word)}(?:e?s)?");
        return Regex.IsMatch(text, $"(?<!\\p{{L}}){string.Join("[ \\n-]+", words)}(?!\\p{{L}})", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);
    }

    [GeneratedRegex(@"(?m)^## (?<letter>.*)$|^### (?<term>.*)\n\n(?:\*(?<es>[^*]+)\.\* )?(?<says>.*)$")]
    private static partial Regex Piece();
}
