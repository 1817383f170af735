using System.Collections.Immutable;
using Witnessmark.Harness;

namespace Witnessmark.Rules.Tests.Pages;

/// <summary>The page of a rule: what it finds, why it matters, and a wrong and a right example as changes to the demo workshop.</summary>
internal sealed record RulePage(string Path, string Name, ImmutableArray<PageExample> Wrong, ImmutableArray<PageExample> Right)
{
    private static readonly string[] Headings = ["## Why it matters", "## Wrong", "## Right"];

    public static IEnumerable<RulePage> All() =>
        new[] { Repo.Path("src", "Checking", "Rules"), Repo.Path("src", "Reading", "Faults") }
            .SelectMany(f => Directory.EnumerateFiles(f, "*.md", SearchOption.AllDirectories))
            .Order(StringComparer.Ordinal)
            .Select(f => Parse(System.IO.Path.GetRelativePath(Repo.Root, f), File.ReadAllText(f)));

    public static RulePage Named(string name) => All().Single(p => p.Name == name);

    public static RulePage Parse(string path, string text)
    {
        var lines = text.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n');
        var places = Headings.Select(h => Array.IndexOf(lines, h)).ToArray();
        if (lines[0] is not ['#', ' ', .. var name])
            throw new PageException(path, 1, "begins with `# name-of-the-rule`");
        if (Array.FindIndex(lines, 1, l => l.Length > 0) is not (> 0 and var summary) || summary >= places[0] || lines[summary][0] == '#')
            throw new PageException(path, 2, "says in one sentence what the rule finds, then `## Why it matters`");
        if (places.Contains(-1) || !places.Order().SequenceEqual(places))
            throw new PageException(path, 1, $"has the headings {string.Join(", ", Headings)} in this order");
        if (lines[places[0]..places[1]].Skip(1).All(string.IsNullOrWhiteSpace))
            throw new PageException(path, places[0] + 1, "says why it matters");
        return new RulePage(path, name, Examples(path, lines, places[1], places[2]), Examples(path, lines, places[2], lines.Length));
    }

    public override string ToString() => Name;

    private static ImmutableArray<PageExample> Examples(string path, string[] lines, int from, int to)
    {
        var examples = ImmutableArray.CreateBuilder<PageExample>();
        for (var i = from; i < to; i++)
        {
            if (!lines[i].StartsWith("```", StringComparison.Ordinal))
                continue;
            var end = Array.IndexOf(lines, "```", i + 1);
            if (end < 0 || end >= to)
                throw new PageException(path, i + 1, "closes its block with ``` alone on a line");
            examples.Add(PageExample.Parse(path, i + 1, lines[i][3..], lines[(i + 1)..end]));
            i = end;
        }
        return examples.Count > 0
            ? examples.ToImmutable()
            : throw new PageException(path, from + 1, "shows an example in a block ```diff procedures/file");
    }
}

public sealed class PageException(string path, int line, string should) : Exception($"{path}:{line}: a page {should}");
