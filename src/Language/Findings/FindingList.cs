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

    /// <summary>
    /// Does the same with each of many things, on all cores. Each finds into a list of its own, and the lists are joined in the
    /// order of the things: the findings are those of one core, in the same order.
    /// </summary>
    public ImmutableArray<TResult> Each<T, TResult>(IEnumerable<T> things, Func<T, FindingList, TResult> work)
    {
        var all = things.ToArray();
        var own = all.Select(_ => new FindingList()).ToArray();
        var results = new TResult[all.Length];
        Parallel.For(0, all.Length, i => results[i] = work(all[i], own[i]));
        foreach (var findings in own)
            AddRange(findings._findings);
        return [.. results];
    }

    public void Each<T>(IEnumerable<T> things, Action<T, FindingList> work) => Each(things, (thing, findings) =>
    {
        work(thing, findings);
        return true;
    });

    /// <summary>All findings in reading order: by path, then by place, then by rule.</summary>
    public ImmutableArray<Finding> InReadingOrder() =>
    [
        .. _findings
            .OrderBy(f => f.At.Source.Path, StringComparer.Ordinal)
            .ThenBy(f => f.At.Span.Start)
            .ThenBy(f => f.Rule.Name, StringComparer.Ordinal),
    ];
}
