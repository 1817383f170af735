using System.Globalization;
using Witnessmark.Proof;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Rendering.Checklist.InWords;

/// <summary>Where people may leave the machine, in step numbers: <c>1 to 7, 14</c>. Nothing where the machine does not say when it may be left.</summary>
internal sealed record StopWords(SheetPlan Plan, Words Words)
{
    private IReadOnlyList<StopPoint> Points => SafeStops.Of(Plan.Scope, Plan.Part);

    public bool AreKnown => Points.Count > 0;

    /// <summary>Of the whole sheet; empty also when there is none.</summary>
    public string All => Ranges(Points);

    /// <summary>For who breaks off in a section: where in it he may, and where next when its end is no place to stop.</summary>
    public string In(SheetSection section)
    {
        var here = Points.Where(p => ReferenceEquals(p.Place.Section, section.Section)).ToList();
        if (here.Count == 0)
            return "";
        var safe = Ranges(here);
        var stop = safe.Length > 0 ? $"{Words.SafeAfter} {safe}." : $"{Words.NotSafeHere}.";
        if (here[^1].IsSafe)
            return stop;
        var next = Points.FirstOrDefault(p => p.IsSafe && p.Place.Step.Number > here[^1].Place.Step.Number);
        return $"{stop} {(next is null ? Words.NoSafeStopAhead : $"{Words.NextSafe} {Number(next)}")}.";
    }

    private string Ranges(IReadOnlyList<StopPoint> points)
    {
        var ranges = new List<List<StopPoint>>();
        var open = false;
        foreach (var point in points)
        {
            if (point.IsSafe && open)
                ranges[^1].Add(point);
            else if (point.IsSafe)
                ranges.Add([point]);
            open = point.IsSafe;
        }
        return string.Join(", ", ranges.Select(Range));
    }

    private string Range(List<StopPoint> range) => range.Count > 2
        ? $"{Number(range[0])} {Words.To} {Number(range[^1])}"
        : string.Join(", ", range.Select(Number));

    private static string Number(StopPoint point) => point.Place.Step.Number.ToString(CultureInfo.InvariantCulture);
}
