using System.Text;
using System.Text.RegularExpressions;
using Witnessmark.Compiler;
using Witnessmark.Harness;
using Witnessmark.Language.Text;

namespace Witnessmark.Cli.Tests;

/// <summary>The demo workshop with a piece of markup in every text that takes one: each value on its own first, then all that were taken at once.</summary>
internal static partial class HostileText
{
    public const string Markup = "<script>alert(1)</script>\"'><img src=x onerror=alert(1)>";

    private const string InYaml = "\"<script>alert(1)</script>\\\"'><img src=x onerror=alert(1)>\"";
    private const string InMarkdown = @"\<script\>alert(1)\</script\>""'\>\<img src=x onerror=alert(1)\>";

    public static IReadOnlyList<RawFile> Demo() => Repo.Files(Repo.OneBrake);

    /// <summary>All of it, and how many values and texts took the markup.</summary>
    public static (IReadOnlyList<RawFile> Files, int Taken) Everywhere()
    {
        var files = Demo();
        var taken = 0;
        for (var i = 0; i < files.Count; i++)
        {
            var text = Encoding.UTF8.GetString(files[i].Bytes.Span);
            var swaps = Swaps(text, files[i].Path).Where(s => IsTaken(files, i, Swapped(text, [s]))).ToList();
            // what is taken alone may not be taken together: then the later one waits outside
            var together = new List<Swap>();
            foreach (var swap in swaps)
                if (together.All(t => !t.Overlaps(swap)))
                    together.Add(swap);
            files = With(files, i, Swapped(text, together));
            taken += together.Count;
        }
        return (files, taken);
    }

    private static bool IsTaken(IReadOnlyList<RawFile> files, int index, string text) => !Pipeline.Check(With(files, index, text)).HasFaults;

    private static IReadOnlyList<RawFile> With(IReadOnlyList<RawFile> files, int index, string text) =>
        [.. files.Select((f, i) => i == index ? RawFile.Of(f.Path, Encoding.UTF8.GetBytes(text)) : f)];

    private static string Swapped(string text, IEnumerable<Swap> swaps) =>
        swaps.OrderByDescending(s => s.Start).Aggregate(text, (t, s) => string.Concat(t.AsSpan(0, s.Start), s.By, t.AsSpan(s.Start + s.Length)));

    private static IEnumerable<Swap> Swaps(string text, string path)
    {
        var body = path.EndsWith(".md", StringComparison.Ordinal) ? text.IndexOf("\n---\n", StringComparison.Ordinal) : text.Length;
        foreach (Match value in BlockValues().Matches(text[..body]).Concat(FlowValues().Matches(text[..body])))
            yield return new Swap(value.Groups["value"].Index, value.Groups["value"].Length, InYaml);
        // in Markdown it goes behind a word: of a heading, a name, a message, a paragraph, a fact
        foreach (Match word in LastWords().Matches(text[body..]))
            yield return new Swap(body + word.Index + word.Length, 0, $" {InMarkdown}");
    }

    /// <summary>What stands behind a key or a dash, to the end of its line.</summary>
    [GeneratedRegex("^ *(?:- |[^ #\n][^#:\n]*: )(?<value>[^ #\\[{\n][^\n]*?)(?= +#|$)", RegexOptions.Multiline)]
    private static partial Regex BlockValues();

    /// <summary>What stands in square and curly brackets on one line.</summary>
    [GeneratedRegex("(?<=^[^#\n]*: [\\[{][^#\n]*(?:[\\[{,] ?|: ))(?<value>\"[^\"\n]*\"|[^ \\[\\]{},:\"\n][^\\[\\]{},:\"\n]*)(?=[,}\\]])", RegexOptions.Multiline)]
    private static partial Regex FlowValues();

    /// <summary>The last word of a bold text or of a line.</summary>
    [GeneratedRegex("[a-z](?=[.,:]?(?:\\*\\*|$))", RegexOptions.Multiline)]
    private static partial Regex LastWords();

    private sealed record Swap(int Start, int Length, string By)
    {
        public bool Overlaps(Swap other) => Start < other.Start + other.Length && other.Start < Start + Length;
    }
}
