using Witnessmark.Language.Text;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Receiving;

/// <param name="OnSite">Whether the person must be of the crew.</param>
internal readonly record struct Signature(Located<string> Initials, bool OnSite);

/// <summary>Everybody who has signed somewhere. Initials are text, also <c>NO</c>.</summary>
internal static class Signatures
{
    private const int LongestInitials = 4;

    public static IEnumerable<Signature> Of(Held held)
    {
        var s = held.SignOff;
        foreach (var member in s.Crew)
        {
            yield return new Signature(member.Initials, false);
            if (member.ObservedBy is { } observer)
                yield return new Signature(observer, true);
        }
        foreach (var entry in held.Entries)
            foreach (var key in new[] { EntryKeys.By, EntryKeys.CheckedBy, EntryKeys.LookedAgain })
                if (Typed.Text(entry.Entry.Find(key)) is { } text)
                    foreach (var one in In(text))
                        yield return new Signature(one, true);
        foreach (var text in new[] { Closing(s.Stops), Closing(s.Deviations) })
            if (text is { } t)
                yield return new Signature(t, true);
        foreach (var text in new[] { s.IssuedBy, s.TypedBy, s.Release?.By })
            if (text is { } t && !Typed.IsEmpty(text))
                yield return new Signature(t, false);
    }

    /// <summary>The people in <c>MO, TV</c>.</summary>
    public static IEnumerable<Located<string>> In(Located<string> text) =>
        text.Value.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(text.As);

    /// <summary>The initials behind the last comma of a statement: <c>none, MO</c>; null when it is not signed.</summary>
    public static Located<string>? Closing(Located<string>? statement)
    {
        if (statement is not { } s || s.Value.LastIndexOf(',') is not (> 0 and var comma))
            return null;
        var initials = s.Value[(comma + 1)..].Trim();
        return initials.Length is > 0 and <= LongestInitials && initials.All(char.IsLetter) ? s.As(initials) : null;
    }
}
