using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Witnessmark.Harness;
using Witnessmark.Language.Findings;
using Witnessmark.Rules.Tests.Workshops;

namespace Witnessmark.Rules.Tests.Cases;

/// <summary>
/// A whole small procedure that says on each line what should be found there. What it says is blanked before the file
/// is read. Files that share their name up to the first dot are one case: a procedure, and the data sheet, tool list or
/// workshop file that it needs.
/// </summary>
internal sealed partial record CaseFile(string Name, ImmutableArray<(string Path, string Text)> Files)
{
    private const string Says = @"\s*(?<severity>fault|query|remark):\s*(?<rules>[a-z0-9, -]+?)\s*";

    private static readonly string Folder = Repo.Path("tests", "Rules.Tests", "Cases");

    /// <summary>Topic and name: <c>Messages/late</c>.</summary>
    public static IEnumerable<string> Names() => Paths().Select(NameOf).Distinct(StringComparer.Ordinal);

    public static CaseFile Read(string name) =>
        new(name, [.. Paths().Where(p => NameOf(p) == name).Select(ReadOne)]);

    /// <summary><c>cases/late.md:12 fault message-late</c></summary>
    public IEnumerable<string> Expected() => Files.SelectMany(f => Expected(f.Path, f.Text)).Order(StringComparer.Ordinal);

    public IEnumerable<string> Found() =>
        Files.Aggregate(DemoWorkshop.WithoutProcedures, (workshop, file) => workshop.With(file.Path, Blanked(file.Text))).Findings()
            .Select(Written).Order(StringComparer.Ordinal);

    private static IEnumerable<string> Paths() => Directory.EnumerateFiles(Folder, "*", SearchOption.AllDirectories)
        .Where(f => f.EndsWith(".md", StringComparison.Ordinal) || f.EndsWith(".yaml", StringComparison.Ordinal))
        .Select(f => Path.GetRelativePath(Folder, f).Replace('\\', '/'))
        .Order(StringComparer.Ordinal);

    private static (string Path, string Text) ReadOne(string path)
    {
        var text = File.ReadAllText(Path.Combine(Folder, path)).ReplaceLineEndings("\n");
        return (PathInWorkshop(path, text), text);
    }

    private static string NameOf(string path) => path[..path.IndexOf('.', StringComparison.Ordinal)];

    private static string PathInWorkshop(string path, string text)
    {
        if (path.EndsWith(".md", StringComparison.Ordinal))
            return $"cases/{Path.GetFileName(path)}";
        if (Has(text, "workshop"))
            return "workshop.yaml";
        return $"{(Has(text, "tools") ? "tools" : "machines")}/{Path.GetFileName(path)}";
    }

    private static bool Has(string text, string key) =>
        text.StartsWith($"{key}:", StringComparison.Ordinal) || text.Contains($"\n{key}:", StringComparison.Ordinal);

    private static IEnumerable<string> Expected(string path, string text) =>
        from line in text.Split('\n').Select((words, i) => (Words: words, Number: i + 1))
        from marker in Marker().Matches(line.Words)
        from rule in marker.Groups["rules"].Value.Split(',', StringSplitOptions.TrimEntries)
        select $"{path}:{line.Number} {marker.Groups["severity"].Value} {rule}";

    private static string Written(Finding finding) =>
        $"{finding.At.Source.Path}:{finding.At.Start.Line} {finding.Severity.ToString().ToLowerInvariant()} {finding.Rule.Name}";

    /// <summary>A marker is blanked, so that places stay; at the end of a line nothing is left, for two blanks there break the line.</summary>
    private static string Blanked(string text) => string.Join('\n', text.Split('\n').Select(line =>
        Marker().IsMatch(line) ? Marker().Replace(line, m => new string(' ', m.Length)).TrimEnd() : line));

    [GeneratedRegex($"(<!--{Says}-->)|((?<=\\s)#{Says}$)")]
    private static partial Regex Marker();
}
