using System.Globalization;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Proof;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Hashing;

/// <summary>
/// Every number on the paper that was worked out, not written: wrench settings, sequences, limits of a step, the second
/// unit beside the first. A mistake in the arithmetic of a later build thus shows as another hash.
/// </summary>
internal static class DerivedCanon
{
    public static Canon Of(Scope scope) => Canon.List(scope.Procedure.Parts
        .Select(p => SheetPlanner.Plan(scope, p.Name?.Value))
        .SelectMany(p => p.Steps)
        .Select(s => Canon.Map(("step", Canon.Text(s.Code.ToString())), ("turns", s.Turns is { } turns ? Canon.Words(turns.Names) : null), ("asks", Canon.List(s.Asks.Select(Of))))));

    /// <summary>The steps after which people may stop, and what each was held against; null where the machine does not say when it may be left.</summary>
    public static Canon? Stops(Scope scope)
    {
        var points = scope.Procedure.Parts.SelectMany(p => SafeStops.Of(scope, p)).ToList();
        return points.Count == 0
            ? null
            : Canon.Map(
                ("after", Canon.Words(points.Where(p => p.IsSafe).Select(p => p.Place.Step.Number.ToString(CultureInfo.InvariantCulture)))),
                ("forbidden", Canon.Map(SafeStops.RulesOf(scope.Machine!).Select(r => (r.Id.Value, (Canon?)NodeCanon.Of(r.Node))))));
    }

    private static Canon Of(Ask ask) => Canon.Map(("key", Canon.Text(ask.Key)), ("worked", ask switch
    {
        ReadingAsk a => Canon.Map(("pieces", Canon.Words(a.Pieces)), ("points", Canon.Maybe(a.Points)), ("accept", Range(a.Accept, a.Reading.JudgesDifference)), ("bands", Bands(a))),
        WorkedAsk a => Canon.Map(("accept", Range(a.Accept))),
        CountAsk a => Canon.Map(("expected", Canon.Maybe(a.Expected))),
        StackAsk a => Canon.Words(a.Cells.Select(c => $"{c.Label} {(c.Outer ? "outer" : "inner")} {c.FacedTo}")),
        SettingAsk a => Both(a.Dial),
        PassAsk a => Canon.Map(
            ("wrench", a is { WrenchInferred: true, Wrench: { } wrench } ? NodeCanon.Of(wrench.Node) : null),
            ("sequence", Canon.Words(a.Sequence.Select(n => n.ToString(CultureInfo.InvariantCulture)))),
            ("passes", Canon.List(a.Settings.Select(Of)))),
        _ => null,
    }));

    private static Canon Of(PassSetting setting) => Canon.Map(
        ("number", Canon.Maybe(setting.Number)),
        ("share", Canon.Text(setting.Share.ToString("0.####", CultureInfo.InvariantCulture))),
        ("circular", Canon.Maybe(setting.Circular)),
        ("dial", Both(setting.Dial)),
        ("at-bolt", Both(setting.AtBolt)));

    /// <summary>Printed with their second unit where no limit is; the order of keys says nothing.</summary>
    private static Canon? Bands(ReadingAsk ask) => ask.Accept is not null || ask.Reading.Bands.IsEmpty
        ? null
        : Canon.List(ask.Reading.Bands.OrderBy(b => b.Name.Value, StringComparer.Ordinal).Select(b => Canon.Map(("name", Canon.Text(b.Name.Value)), ("in", Range(b.Range.Value, ask.Reading.JudgesDifference)))));

    private static Canon? Range(QuantityRange? range, bool difference = false) => range is { } r
        ? Canon.Map(("range", QuantityCanon.Of(r)), ("beside", DualUnits.Beside(r, difference) is { } b ? QuantityCanon.Of(b) : null))
        : null;

    private static Canon Both(Quantity quantity) =>
        Canon.Map(("native", QuantityCanon.Of(quantity)), ("beside", DualUnits.Beside(quantity) is { } b ? QuantityCanon.Of(b) : null));
}
