namespace Witnessmark.Records.Sheets;

/// <summary>Declared names as people read them.</summary>
internal static class Wording
{
    /// <summary><c>backing-ring-bolts</c> is backing ring bolts; a tag such as <c>TW-340</c> stays as it is stamped.</summary>
    public static string Shown(string name) => name.Any(char.IsUpper) ? name : name.Replace('-', ' ');

    /// <summary>First letters: <c>left-over</c> is LO.</summary>
    public static string Letters(string name) =>
        string.Concat(name.Trim('{', '}').Split('-', StringSplitOptions.RemoveEmptyEntries).Select(w => char.ToUpperInvariant(w[0])));
}
