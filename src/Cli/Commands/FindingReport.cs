using System.Collections.Immutable;
using Witnessmark.Language.Findings;
using Witnessmark.Rendering.Messages;

namespace Witnessmark.Cli.Commands;

/// <summary>Tells findings the way that was asked for, and what they add up to.</summary>
internal static class FindingReport
{
    public static void Write(ImmutableArray<Finding> findings, string report, FindingText text, TextWriter writer)
    {
        if (report == "json")
        {
            writer.Write(FindingJson.Write(findings));
            return;
        }
        foreach (var finding in findings)
            writer.Write(report == "short" ? text.Short(finding) : text.Long(finding));
    }

    public static string Sum(ImmutableArray<Finding> findings)
    {
        if (findings.IsEmpty)
            return "No finding.";
        var parts = new[]
        {
            Many(findings.Count(f => f.Severity == Severity.Fault), "fault", "faults"),
            Many(findings.Count(f => f.Severity == Severity.Query), "query", "queries"),
            Many(findings.Count(f => f.Severity == Severity.Remark), "remark", "remarks"),
        };
        return string.Join(", ", parts.Where(p => p.Length > 0)) + ".";
    }

    public static string Many(int count, string one, string many) => count switch
    {
        0 => "",
        1 => $"1 {one}",
        _ => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{count} {many}"),
    };
}
