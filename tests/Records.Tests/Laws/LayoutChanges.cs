using System.Collections.Immutable;
using System.Text;
using System.Text.RegularExpressions;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Tidying;

namespace Witnessmark.Records.Tests.Laws;

/// <summary>Changes of layout: another look of the file, the same text.</summary>
internal static partial class LayoutChanges
{
    public delegate string Change(string path, string text, Dice dice);

    public static ImmutableArray<(string Words, Change Make)> All { get; } =
    [
        ("line ends CR LF", (_, t, _) => Lines(t, _ => true)),
        ("line ends mixed", (_, t, d) => Lines(t, _ => d.OneIn(2))),
        ("a byte order mark", (_, t, _) => "\uFEFF" + t.TrimStart('\uFEFF')),
        ("letters in two codes", (_, t, _) => t.Normalize(NormalizationForm.FormD)),
        ("other bullets", (p, t, d) => InBody(p, t, b => Bullet().Replace(b, "$1" + d.Of(["*", "+", "-"]) + " "))),
        ("strong with low lines", (p, t, d) => InBody(p, t, b => Strong().Replace(b, m => d.OneIn(3) ? m.Value : $"__{m.Groups[1].Value}__"))),
        ("step numbers", (p, t, d) => InBody(p, t, b => StepNumber().Replace(b, m => $"{d.Below(m.Length > 3 ? 99 : 9) + 1}."))),
        ("step numbers with brackets", (p, t, _) => InBody(p, t, b => StepNumber().Replace(b, m => m.Value.TrimEnd('.') + ")"))),
        ("blank lines between blocks", (p, t, d) => InBody(p, t, b => Gap().Replace(b, m => d.OneIn(2) ? m.Value + "\n\n" : m.Value))),
        ("blank lines between facts", (p, t, d) => InBody(p, t, b => FactLine().Replace(b, m => d.OneIn(4) ? "\n" + m.Value : m.Value))),
        ("words wrapped elsewhere", (p, t, d) => InBody(p, t, b => Words().Replace(b, m => d.OneIn(12) && !InFact(b, m.Index) ? Wrapped(b, m.Index) : m.Value))),
        ("blanks that do not break", (p, t, d) => InBody(p, t, b => Words().Replace(b, m => d.OneIn(10) && !InFact(b, m.Index) ? "\u00A0" : m.Value))),
        ("two blanks", (p, t, d) => InBody(p, t, b => Words().Replace(b, m => d.OneIn(10) && !InFact(b, m.Index) ? "  " : m.Value))),
        ("one blank at line ends", (_, t, d) => LineEnd().Replace(t, m => d.OneIn(5) ? " " + m.Value : m.Value)),
        ("no line feed at the end", (_, t, _) => t.TrimEnd('\n', '\r')),
        ("comments in data", (p, t, d) => YamlLayout.Comments(p, t, d)),
        ("blank lines in data", (p, t, d) => YamlLayout.BlankLines(p, t, d)),
        ("quotes", (p, t, d) => YamlLayout.Quotes(p, t, d)),
        ("the order of keys", (p, t, d) => YamlLayout.KeyOrder(p, t, d)),
        ("short maps in lines", (p, t, d) => YamlLayout.Blocks(p, t, d)),
        ("short lists in lines", (p, t, d) => YamlLayout.ListBlocks(p, t, d)),
        ("lines as short maps", (p, t, d) => YamlLayout.Flow(p, t, d)),
        ("texts of data over two lines", (p, t, d) => YamlLayout.Wrapped(p, t, d)),
        ("units as shops spell them", (p, t, d) => YamlLayout.Units(p, t, d)),
        ("units of times", (p, t, d) => InBody(p, t, b => Minutes().Replace(b, m => m.Groups[1].Value + d.Of(["minutes", "mins", "minute"])))),
        ("tidy", (p, t, _) => Tidy(p, t)),
    ];

    public static string Tidy(string path, string text) =>
        Tidier.Tidy(RawFile.Of(path, Encoding.UTF8.GetBytes(text))) is { } tidied ? Encoding.UTF8.GetString(tidied.Tidied.Bytes.Span) : text;

    private static string Lines(string text, Func<int, bool> other) =>
        Regex.Replace(text.Replace("\r\n", "\n", StringComparison.Ordinal), "\n", m => other(m.Index) ? "\r\n" : "\n");

    /// <summary>The text below the front matter; data files have none.</summary>
    private static string InBody(string path, string text, Func<string, string> change)
    {
        if (!path.EndsWith(".md", StringComparison.Ordinal))
            return text;
        var body = Below().Match(text);
        return text[..(body.Index + body.Length)] + change(text[(body.Index + body.Length)..]);
    }

    /// <summary>A line end and whatever the next line must begin with to go on.</summary>
    private static string Wrapped(string body, int at)
    {
        var start = body.LastIndexOf('\n', at) + 1;
        var begins = body[start..];
        return Quoted().Match(begins) is { Success: true } quoted ? "\n> " + (quoted.Groups[1].Success ? "  " : "")
            : begins.StartsWith('#') || begins.StartsWith('|') ? " "
            : "\n" + new string(' ', Indent().Match(begins).Length);
    }

    /// <summary>A fact has one line, and its names have plain blanks.</summary>
    private static bool InFact(string body, int at) => Key().IsMatch(body[(body.LastIndexOf('\n', at) + 1)..]);

    [GeneratedRegex(@"\A\uFEFF?---\s*?\r?\n.*?\n---[ \r]*\n", RegexOptions.Singleline)]
    private static partial Regex Below();

    [GeneratedRegex(@"(?<=^)((?:> ?)?[ ]*)[-*+] (?=\S)", RegexOptions.Multiline)]
    private static partial Regex Bullet();

    [GeneratedRegex(@"(?<![\w*])\*\*(\w[^*\n\r_]*[\w.,;:])\*\*(?![\w*])")]
    private static partial Regex Strong();

    [GeneratedRegex(@"^\d{1,2}\.(?= )", RegexOptions.Multiline)]
    private static partial Regex StepNumber();

    [GeneratedRegex(@"\n\n(?=\S)")]
    private static partial Regex Gap();

    [GeneratedRegex(@"^    [-*+] (?=[a-z-]+: )", RegexOptions.Multiline)]
    private static partial Regex FactLine();

    // between two plain words: nothing that Markdown could take for a sign at the start of a line
    [GeneratedRegex(@"(?<=\p{L}[\p{L}\p{M}]+[,.]?) (?=\p{L}[\p{L}\p{M}])")]
    private static partial Regex Words();

    [GeneratedRegex(@"(?<=[^\s\\])(?=\r?\n)")]
    private static partial Regex LineEnd();

    [GeneratedRegex(@"(?<=- (?:time|wait): )([0-9. to]*)min\b")]
    private static partial Regex Minutes();

    [GeneratedRegex(@"\A> ?([-*+] )?")]
    private static partial Regex Quoted();

    [GeneratedRegex(@"\A *(?:[-*+] |\d+[.)] )?")]
    private static partial Regex Indent();

    [GeneratedRegex(@"\A *(?:> ?)?[-*+] [a-z-]+:")]
    private static partial Regex Key();
}
