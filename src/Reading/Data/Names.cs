using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Reading.Faults;

namespace Witnessmark.Reading.Data;

/// <summary>Findings about names, keys and words.</summary>
public static partial class Names
{
    private const int LongestId = 40;

    private const string SignsOfOurs = ",=(){}[]:#|<>\"`";
    private const string WindowsNames = "con|prn|aux|nul|com[0-9]|lpt[0-9]";

    private static readonly System.Buffers.SearchValues<char> Signs = System.Buffers.SearchValues.Create(SignsOfOurs);

    /// <summary>A name that conditions and steps can quote.</summary>
    internal static string Pattern { get; } =
        $@"^[^{SignsOfOurs.Replace("[", @"\[", StringComparison.Ordinal).Replace("]", @"\]", StringComparison.Ordinal)}\u0000-\u001F\u007F-\u009F]+$";

    /// <summary>A name that files can have.</summary>
    internal static string FilePattern { get; } =
        $"^(?!(?:{string.Concat(WindowsNames.Select(c => char.IsAsciiLetter(c) ? $"[{c}{char.ToUpperInvariant(c)}]" : $"{c}"))})$)(?=.*[A-Za-z0-9])[A-Za-z0-9-]{{1,{LongestId}}}$";

    /// <summary>Whether conditions and steps can quote it; reports it when not.</summary>
    public static bool Usable(Located<string> name, FindingList findings)
    {
        var sign = name.Value.AsSpan().IndexOfAny(Signs);
        if (sign < 0 && name.Value.Length > 0 && !name.Value.Any(char.IsControl))
            return true;
        findings.Add(
            DataFaults.NameUnusable,
            name.At,
            name.Value.Length == 0 ? "A name is empty here."
                : sign < 0 ? $"The name `{Say.Short(name.Value)}` has a line end or a tab in it."
                : $"The name `{Say.Short(name.Value)}` has the sign `{name.Value[sign]}` in it.",
            "Steps and conditions call things by their names, and these signs mean something else there.",
            "Use letters, digits and hyphens: `wheel-nuts`.");
        return false;
    }

    /// <summary>Whether a page, a sheet and a sign-off can be named after it, on any computer; reports it when not.</summary>
    internal static bool UsableForFile(Located<string> id, FindingList findings)
    {
        var said = Say.Short(id.Value);
        var sign = id.Value.FirstOrDefault(c => !char.IsAsciiLetterOrDigit(c) && c != '-');
        var trouble = sign == ' ' ? $"The name `{said}` has a blank in it."
            : sign != default ? $"The name `{said}` has the sign `{sign}` in it."
            : id.Value.Length > LongestId ? $"The name `{said}` has {Say.Number(id.Value.Length)} signs."
            : !id.Value.Any(char.IsAsciiLetterOrDigit) ? $"The name `{said}` has no letter and no digit in it."
            : KeptByWindows.IsMatch(id.Value) ? $"`{said}` is a name that Windows keeps for itself."
            : null;
        if (trouble is null)
            return true;
        findings.Add(
            DataFaults.NameUnusable,
            id.At,
            trouble,
            "The sheet, its page and its sign-off are files of that name, and somebody copies it by hand from paper.",
            $"Use letters without accents, digits and hyphens, at most {Say.Number(LongestId)}: `WB-40`, `okr-34`.");
        return false;
    }

    public static Finding NotInList(Located<string> word, string whose, ImmutableArray<string> words) => new(
        DataFaults.ValueNotInList,
        word.At,
        $"{whose} is `{Say.Short(word.Value)}`; it can be {Say.Or(words)}.",
        "Rules and sheets know only these words; another one would be passed over.",
        NearMiss.Of(word.Value, words) is { } near ? $"Did you mean `{near}`?" : $"Write {Say.Or(words)}.")
    {
        Correction = Correction.Respelled(word, words),
    };

    internal static Finding Unknown(Located<string> key, string what, IEnumerable<string> known)
    {
        var all = known.ToImmutableArray();
        return new Finding(
            DataFaults.KeyUnknown,
            key.At,
            $"`{Say.Short(key.Value)}` is not a key of {what}.",
            "A key that nobody knows is a fact that nobody reads: what stands behind it would never be checked or printed.",
            NearMiss.Of(key.Value, all) is { } near ? $"Did you mean `{near}`?"
                : all.Length == 0 ? "Take the line out."
                : $"What else can stand here: {string.Join(", ", all)}.")
        {
            Correction = Correction.Respelled(key, all),
        };
    }

    internal static Finding Missing(string key, string what, DataMap map) => Missing(key, what, Beginning(map));

    internal static Location Beginning(DataMap map) => map.Entries is [var first, ..] ? first.Key.At : map.At;

    internal static Finding Missing(string key, string what, Location at) => new(
        DataFaults.KeyMissing,
        at,
        $"`{key}` is missing in {what}.",
        "Rules and sheets count on it; without it they would have to guess.",
        $"Add a line `{key}: …`.");

    [GeneratedRegex("^(" + WindowsNames + ")$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex KeptByWindows { get; }
}
