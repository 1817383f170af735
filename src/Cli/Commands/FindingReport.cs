using System.Collections.Immutable;
using Witnessmark.Cli.Disk;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Wording;
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

    /// <summary>One document, however many workshops: paths begin at the workshop, or with the folder of each where they stand side by side.</summary>
    /// <param name="findings">Of each workshop, in their order.</param>
    public static string Json(Premises premises, IEnumerable<ImmutableArray<Finding>> findings) =>
        FindingJson.Write([.. premises.Workshops.Zip(findings, (w, f) => (premises.SideBySide ? Premises.NameOf(w) : "", f))]);

    /// <summary>With one file named, its own findings and those that point into it.</summary>
    public static bool Concerns(this Finding finding, string? only) =>
        only is null || finding.At.Source.Path == only || finding.Further.Any(p => p.At.Source.Path == only);

    /// <summary>Names files that lie between the workshops, where nobody reads them.</summary>
    /// <returns>Whether there are any.</returns>
    public static bool TellLeft(Premises premises, Surroundings around)
    {
        var left = premises.Left(around);
        foreach (var file in left)
            around.Error.WriteLine(Visible.Text($"{file} lies in no workshop, so it was not read. Move it into {Say.Or(premises.Workshops.Select(Premises.NameOf))}."));
        return left.Count > 0;
    }

    public static string Sum(ImmutableArray<Finding> findings)
    {
        if (findings.IsEmpty)
            return "No finding.";
        var parts = from severity in new[] { Severity.Fault, Severity.Query, Severity.Remark }
                    let count = findings.Count(f => f.Severity == severity)
                    where count > 0
                    select Say.Count(count, severity.Word(), severity == Severity.Query ? "queries" : null);
        return string.Join(", ", parts) + ".";
    }
}
