using Witnessmark.Language.Text;

namespace Witnessmark.Language.Wording;

/// <summary>Declared names as people read them.</summary>
public static class DeclaredName
{
    /// <summary>
    /// <c>backing-ring-bolts</c> is backing ring bolts; a tag such as <c>TW-340</c> or <c>micrometer-25</c> stays as it is stamped.
    /// </summary>
    public static string Spoken(string name) =>
        name.Any(c => char.IsUpper(c) || char.IsDigit(c)) ? name : name.Replace('-', ' ');

    public static string Spoken(this Located<string> name) => Spoken(name.Value);

    /// <summary>Every name of a text: <c>lock-pins = all engaged</c> is "lock pins = all engaged". A sign that stands alone stays.</summary>
    public static string SpokenIn(string text) => string.Join(' ', text.Split(' ').Select(w => w.Length == 1 ? w : Spoken(w)));

    /// <summary>First letters: <c>left-over</c> is LO.</summary>
    public static string Letters(string name) =>
        string.Concat(name.Trim('{', '}').Split('-', StringSplitOptions.RemoveEmptyEntries).Select(w => char.ToUpperInvariant(w[0])));
}
