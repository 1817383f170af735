using System.Collections.Immutable;
using Witnessmark.Language.Text;

namespace Witnessmark.Language.Findings;

/// <summary>Collects findings; one cause is kept once (same rule at the same place).</summary>
public sealed class FindingList
{
    private readonly List<Finding> _findings = [];
    private readonly HashSet<(string Rule, string Path, TextSpan Span)> _seen = [];

    public int Count => _findings.Count;

    public void Add(Finding finding)
    {
        if (_seen.Add((finding.Rule.Name, finding.At.Source.Path, finding.At.Span)))
            _findings.Add(finding);
    }

    public void Add(RuleInfo rule, Location at, string found, string why, string putRight, params ImmutableArray<FurtherPlace> further) =>
        Add(new Finding(rule, at, found, why, putRight) { Further = further });

    public void AddRange(IEnumerable<Finding> findings)
    {
        foreach (var finding in findings)
            Add(finding);
    }

    /// <summary>All findings in reading order: by path, then by place, then by rule.</summary>
    public ImmutableArray<Finding> InReadingOrder() =>
    [
        .. _findings
            .OrderBy(f => f.At.Source.Path, StringComparer.Ordinal)
            .ThenBy(f => f.At.Span.Start)
            .ThenBy(f => f.Rule.Name, StringComparer.Ordinal),
    ];
}
