using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Readings;

/// <summary>A reading names more or fewer places than it has points.</summary>
public sealed class PointNamesDisagree : IMeasuringRule
{
    public static RuleInfo Info { get; } = new("point-names-disagree", "Readings", Severity.Fault);

    public static void Check(Measuring declared, FindingList findings)
    {
        foreach (var reading in declared.Readings)
        {
            var (names, points) = (reading.PointNames, reading.Points?.Value ?? 1);
            // no names, or one for each point
            if (names.IsEmpty || names.Length == points)
                continue;
            // a number of points that cannot be read has its own finding
            if (reading.Points is null && reading.Node is DataMap map && map.Find("points") is not null)
                continue;
            findings.Add(
                Info,
                names[^1].At,
                $"{reading.Id.Value} has {Say.Count(points, "point")} and names {Say.Count(names.Length, "place")} under `at`.",
                "Each box carries the name of its place. With one too few the last value has no place, and a spread between places is worked out from the wrong ones.",
                $"Name {Say.Count(points, "place")} in the order in which they are measured.");
        }
    }
}
