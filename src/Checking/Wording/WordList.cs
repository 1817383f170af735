using System.Collections.Frozen;
using System.Collections.Immutable;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Wording;

/// <summary>A closed list of words, in the two languages that procedures are written in.</summary>
internal sealed class WordList(string english, string spanish)
{
    private readonly FrozenSet<string> _english = Split(english);
    private readonly FrozenSet<string> _spanish = Split(spanish);

    public bool Has(string word, Scope scope) => (scope.IsSpanish() ? _spanish : _english).Contains(word);

    private static FrozenSet<string> Split(string words) =>
        words.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).ToFrozenSet(StringComparer.Ordinal);
}

internal static class WordReading
{
    private static readonly Once<Procedure, ImmutableArray<(Step Step, string[] Words)>> InNames = new(p => [.. p.Steps.Select(s => (s, s.Name.Value.Words()))]);

    /// <summary>Every step with the words of its name.</summary>
    public static ImmutableArray<(Step Step, string[] Words)> StepNames(this Procedure procedure) => InNames.Of(procedure);

    /// <summary>Whether the procedure is written in Spanish; everything else is read as English.</summary>
    public static bool IsSpanish(this Scope scope) =>
        (scope.Procedure.Language ?? scope.Library.Workshop.Language)?.Value.StartsWith("es", StringComparison.OrdinalIgnoreCase) ?? false;

    /// <summary>The words of a text in lower case, "don't" as one.</summary>
    public static string[] Words(this string text)
    {
        var words = new List<string>();
        var lower = text.ToLowerInvariant().Replace('’', '\'');
        for (var start = 0; start < lower.Length; start++)
        {
            var end = start;
            while (end < lower.Length && (char.IsLetterOrDigit(lower[end]) || (end > start && IsJoint(lower, end))))
                end++;
            if (end > start)
                words.Add(lower[start..end]);
            start = end;
        }
        return [.. words];
    }

    /// <summary>How many words people would count: "backing-ring" and "o'clock" are one.</summary>
    public static int WordCount(this string text)
    {
        var count = 0;
        var inside = false;
        foreach (var c in text)
        {
            if (char.IsWhiteSpace(c))
                inside = false;
            else if (!inside && char.IsLetterOrDigit(c))
                (inside, count) = (true, count + 1);
        }
        return count;
    }

    private static bool IsJoint(string text, int at) => text[at] == '\'' && at + 1 < text.Length && char.IsLetterOrDigit(text[at + 1]);
}
