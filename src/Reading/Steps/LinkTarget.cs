using System.Text.RegularExpressions;

namespace Witnessmark.Reading.Steps;

/// <summary>Where a link or image may lead: to a page with https, or to a file of the workshop.</summary>
internal static partial class LinkTarget
{
    /// <summary>What is wrong with it, as a half sentence, or null.</summary>
    /// <param name="path">Of the file that it stands in.</param>
    /// <param name="target">As written between the parentheses.</param>
    public static string? Trouble(string path, string target)
    {
        if (target.Length == 0)
            return "leads nowhere";
        if (target.StartsWith("https://", StringComparison.Ordinal) && !target.Any(c => c is '\\' or '"' or '<' or '>' || char.IsWhiteSpace(c) || char.IsControl(c)))
            return null;
        var plain = Unescaped(target);
        if (Scheme.Match(plain) is { Success: true } scheme)
            return $"begins with `{scheme.Value}`";
        if (plain.Any(c => c is '\\' or ':' || char.IsControl(c)))
            return "has a sign in it that no file of the workshop has";
        if (plain.StartsWith('/'))
            return "begins at the root of some computer";
        return StaysInside(path, plain) ? null : "leads out of the workshop";
    }

    private static string Unescaped(string target)
    {
        var plain = target;
        // %252e is %2e is a dot
        for (var turn = 0; turn < 3; turn++)
            plain = Uri.UnescapeDataString(plain);
        return plain.TrimStart();
    }

    private static bool StaysInside(string path, string target)
    {
        var depth = path.Count(c => c == '/');
        foreach (var folder in target.Split('#', '?')[0].Split('/'))
        {
            depth += folder switch
            {
                ".." => -1,
                "." or "" => 0,
                _ => 1,
            };
            if (depth < 0)
                return false;
        }
        return true;
    }

    [GeneratedRegex(@"^[A-Za-z][A-Za-z0-9+.\-]*:")]
    private static partial Regex Scheme { get; }
}
