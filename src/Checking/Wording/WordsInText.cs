using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Wording;

/// <summary>The words of a text, one after another as they stand there, "don't" as one and with a straight apostrophe.</summary>
internal ref struct WordsInText(ReadOnlySpan<char> text)
{
    private ReadOnlySpan<char> _rest = text;

    public ReadOnlySpan<char> Current { get; private set; }

    public readonly WordsInText GetEnumerator() => this;

    public bool MoveNext()
    {
        var start = 0;
        while (start < _rest.Length && !char.IsLetterOrDigit(_rest[start]))
            start++;
        var end = start;
        while (end < _rest.Length && (char.IsLetterOrDigit(_rest[end]) || (end > start && IsJoint(_rest, end))))
            end++;
        Current = Straight(_rest[start..end]);
        _rest = _rest[end..];
        return !Current.IsEmpty;
    }

    /// <summary>The next word; nothing behind the last.</summary>
    public ReadOnlySpan<char> Next()
    {
        MoveNext();
        return Current;
    }

    private static ReadOnlySpan<char> Straight(ReadOnlySpan<char> word) => word.Contains('’') ? word.ToString().Replace('’', '\'') : word;

    private static bool IsJoint(ReadOnlySpan<char> text, int at) => text[at] is '\'' or '’' && at + 1 < text.Length && char.IsLetterOrDigit(text[at + 1]);
}

internal static class WordReading
{
    /// <summary>Whether the procedure is written in Spanish; everything else is read as English.</summary>
    public static bool IsSpanish(this Scope scope) =>
        (scope.Procedure.Language ?? scope.Library.Workshop.Language)?.Value.StartsWith("es", StringComparison.OrdinalIgnoreCase) ?? false;

    public static WordsInText Words(this string text) => new(text);

    public static WordsInText Words(this ReadOnlySpan<char> text) => new(text);

    public static string[] WordsInLowerCase(this string text)
    {
        var words = new List<string>();
        foreach (var word in text.ToLowerInvariant().Words())
            words.Add(word.ToString());
        return [.. words];
    }

    /// <summary>Whether it is this word, in capitals or not.</summary>
    public static bool IsWord(this ReadOnlySpan<char> word, string other) => word.Equals(other, StringComparison.OrdinalIgnoreCase);

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
}
