using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;

namespace Witnessmark.Checking.Rules.Readings;

/// <summary>What the numbers of a reading have in common.</summary>
internal static class ReadingNumbers
{
    /// <summary>Every unit that the reading is written with, and what it is written for.</summary>
    public static IEnumerable<(Unit Unit, Location At, string What)> Units(this ReadingItem reading)
    {
        if (reading.Resolution is { } resolution)
            yield return (resolution.Value.Unit, resolution.At, "resolution");
        if (reading.Plausible is { } plausible)
            yield return (plausible.Value.Unit, plausible.At, "plausible");
        foreach (var band in reading.Bands)
            yield return (band.Range.Value.Unit, band.Range.At, band.Name.Value);
    }

    /// <summary>What it measures: length, pressure …; null for a look.</summary>
    public static string? Kind(this ReadingItem reading) => reading.Units().Select(u => u.Unit.Kind).FirstOrDefault();

    public static bool IsOfOneKind(this ReadingItem reading) => reading.Units().Select(u => u.Unit.Kind).Distinct().Count() <= 1;
}
