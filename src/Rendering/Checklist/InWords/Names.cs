namespace Witnessmark.Rendering.Checklist.InWords;

/// <summary>Declared names as people read them.</summary>
internal static class Names
{
    /// <summary><c>backing-ring-bolts</c> is backing ring bolts; a tag such as <c>TW-340</c> or <c>micrometer-25</c> stays as it is stamped.</summary>
    public static string Shown(string name) =>
        name.Any(c => char.IsUpper(c) || char.IsDigit(c)) ? name : name.Replace('-', ' ');

    public static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
