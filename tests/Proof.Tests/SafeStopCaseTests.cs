using Witnessmark.Harness;
using Witnessmark.Language.Findings;
using Witnessmark.Reading;

namespace Witnessmark.Proof.Tests;

/// <summary>A case is a workshop in a folder; behind each step stands, as a remark, what must be said of the point after it.</summary>
public sealed class SafeStopCaseTests
{
    public static TheoryData<string> Cases => [.. Directory.EnumerateDirectories(Repo.Path("tests", "Proof.Tests", "Cases")).Select(d => Path.GetFileName(d)!).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Cases))]
    public void Every_point_is_what_the_file_says(string name)
    {
        var findings = new FindingList();
        var library = WorkshopReader.Read(Repo.Files(Repo.Path("tests", "Proof.Tests", "Cases", name)), findings);
        Assert.Empty(findings.InReadingOrder().Select(f => f.Found));
        var points = library.Procedures
            .SelectMany(p => p.Parts.SelectMany(part => SafeStops.Of(library.ScopeOf(p), part)))
            .Where(p => p.Place.Step.Remarks.Length > 0).ToList();
        Assert.NotEmpty(points);
        Assert.Equal(Lines(points, Said), Lines(points, SafeStopTests.Verdict));
    }

    private static string Lines(List<StopPoint> points, Func<StopPoint, string> verdict) =>
        string.Join('\n', points.Select(p => $"{p.Place.Step.Number} {p.Place.Step.Name}: {verdict(p)}"));

    private static string Said(StopPoint point)
    {
        var content = point.Place.Step.At;
        var line = content.Source.Content[content.Span.Start..content.Span.End].Split('\n').Single(l => l.TrimStart().StartsWith("- then ", StringComparison.Ordinal));
        return line.Trim()["- then ".Length..];
    }
}
