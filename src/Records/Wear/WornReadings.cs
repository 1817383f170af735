using System.Collections.Immutable;
using Witnessmark.Engineering.Measuring;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Records.Receiving;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Wear;

/// <summary>
/// Readings of parts that had run: the part has a wear limit, and the step lets a part pass that is thinner than a new one may
/// be. Where only new parts pass, the part is replaced each time and a line through its readings would say nothing.
/// </summary>
public static class WornReadings
{
    private const decimal MostHours = 1_000_000;

    /// <summary>Whether the hours can be those of a machine: from 0 to a million.</summary>
    public static bool HasHours(SignOff complete) => HoursOf(complete) is >= 0 and <= MostHours;

    /// <param name="complete">Received as complete, with hours that can be.</param>
    /// <param name="library">The one that it was held against.</param>
    public static IEnumerable<WornReading> Of(SignOff complete, Library library)
    {
        var held = Held.Of(complete, library, []);
        if (held.Plan?.Scope.Machine is not { } machine || HoursOf(complete) is not { } hours)
            return [];
        return
            from answer in held.Answers<ReadingAsk>()
            where !answer.Entry.NotDone && answer.Ask.Reading.Of is not null
            let part = machine.Parts.Find(answer.Ask.Reading.Of!.Value.Value)
            where part is not null && LetsWornPass(answer.Ask, part)
            let value = Judged(answer)
            where value is not null && value.Value.Unit.Kind == "length"
            select new WornReading(
                machine.Id.Value, Text(complete.Unit?.Value), Text(complete.Place?.Value), part, answer.Ask.Reading, hours, value.Value, Text(complete.Title?.Value), Text(complete.Copy?.Value));
    }

    private static bool LetsWornPass(ReadingAsk ask, PartKind part) =>
        part is { WornAt.Value: { Unit.Kind: "length" }, Thickness.Value: var thickness } && thickness.Low.Unit.Kind == "length"
        && ask.Accept is { Unit.Kind: "length" } accept && (accept.Low is not { } low || low.Value.CompareTo(thickness.Low) < 0);

    /// <summary>A sum or a spread cannot be held against the limit of one part.</summary>
    private static Quantity? Judged(Answer<ReadingAsk> answer)
    {
        if (answer.Ask.Reading.Judge?.Value is "sum" or "spread")
            return null;
        ImmutableArray<ImmutableArray<Quantity>> rows = [.. answer.Sound().Select(r => r.In(r.Unit!).ToImmutableArray())];
        return Judgement.Of(answer.Ask.Reading, rows)?.Values.Select(v => (Quantity?)v.Value).MinBy(v => v!.Value.Number);
    }

    private static decimal? HoursOf(SignOff record) =>
        record.Hours is { Value: { Unit.Kind: "time" } hours } ? hours.In(UnitTable.Get("h")).Number : null;

    private static string Text(string? text) => text?.Trim() ?? "";
}
