using Witnessmark.Language.Findings;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>No unit, or not the one that the boxes are in.</summary>
public sealed class ReadingUnit : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Fault("reading-unit");

    public static void Check(Held held, FindingList findings)
    {
        foreach (var answer in held.Answers<ReadingAsk>())
            if (answer.Ask.Unit() is { } unit)
                foreach (var row in answer.Rows().Where(r => r.Unclear is null && r.Unit != unit))
                    Add(findings, row.At, answer.Name(row), row.UnitText, row.Unit, unit);
        foreach (var answer in held.Answers<WorkedAsk>())
            if (answer.Ask.Value.Round?.Value.Unit is { } unit && TypedRow.Of("", answer.Value) is { Unclear: null } row && row.Unit != unit)
                Add(findings, row.At, DeclaredName.Spoken(answer.Ask.Key), row.UnitText, row.Unit, unit);
    }

    private static void Add(FindingList findings, Location at, string name, string written, Unit? known, Unit asked) => findings.Add(
        Info,
        at,
        Say.Capital(written.Length == 0
            ? $"{name} has no unit; the sheet asks for {asked}."
            : $"{name} is written in {written}; the sheet asks for {asked}."),
        known is not null && known.SameKindAs(asked)
            ? $"The same number is something else in another unit: 1 {known} is {One(known, asked)}."
            : "A number says nothing without the unit it was read in.",
        written.Length == 0
            ? $"Write {asked} behind the numbers, when that is what the gauge shows."
            : $"Look at the gauge: if it shows {asked}, put the unit right. If it does not, measure again with one that does.");

    private static Quantity One(Unit unit, Unit other) =>
        DualUnits.Beside(new Quantity(1.000m, unit)) is { } beside && beside.Unit == other ? beside : new Quantity(1, unit).In(other).RoundedTo(3);
}
