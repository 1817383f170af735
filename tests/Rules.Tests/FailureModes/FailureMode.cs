using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Witnessmark.Harness;

namespace Witnessmark.Rules.Tests.FailureModes;

/// <summary>A row of the page <c>failure-modes.md</c>.</summary>
/// <param name="When">Joined by blanks that do not break. A: when the files are checked; S: when a sign-off comes back; P: on the paper.</param>
/// <param name="Rules">By name.</param>
internal sealed partial record FailureMode(string Id, string What, ImmutableArray<string> When, string FoundBy, ImmutableArray<string> Rules)
{
    public const string Proof = "proof of states";

    public static ImmutableArray<FailureMode> All { get; } = [.. Parse(File.ReadAllText(Repo.Path("site", "pages", "failure-modes.md")))];

    public static IEnumerable<FailureMode> Parse(string page) =>
        from line in page.ReplaceLineEndings("\n").Split('\n')
        where line.StartsWith("| F", StringComparison.Ordinal)
        let cells = line.Trim('|', ' ').Split(" | ")
        select new FailureMode(cells[0], cells[1], [.. cells[2].Split('\u00A0')], cells[3], [.. Name().Matches(cells[3]).Select(m => m.Groups[1].Value)]);

    public override string ToString() => $"{Id} {What}";

    [GeneratedRegex("`([^`]+)`")]
    private static partial Regex Name();
}
