using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Reading.References;

/// <summary>Names in readings, tests and hazards, of a data sheet or of a procedure's own.</summary>
internal sealed class OwnItemsCheck(NameCheck names)
{
    public void Check(Items<ReadingItem> readings, Items<TestItem> tests, Items<Hazard> hazards, Items<DeviceKind> devices)
    {
        var conditions = new ConditionCheck(names, new PlaceCheck(names, []));
        foreach (var of in readings.Select(r => r.Of).OfType<Located<string>>())
            names.Must(of, NameKind.Part, "of");
        foreach (var first in readings.Select(r => r.TakenAfter).OfType<Located<string>>())
            names.Must(first, NameKind.Reading, "taken-after");
        foreach (var reading in tests.SelectMany(t => t.Readings))
            names.Must(reading, NameKind.Reading, "readings");
        foreach (var passes in tests.Select(t => t.PassesWhen).OfType<Condition>())
            conditions.Check(passes);
        // both values are looked up as those of a condition are
        foreach (var turn in devices.Select(d => d.Turns).OfType<DeviceTurn>())
            conditions.Check(new StateClause(turn.State, null, false, [turn.From, turn.To], turn.At));
        foreach (var hazard in hazards)
        {
            if (hazard.Zone is { } zone)
                names.Must(zone, NameKind.Zone, "zone");
            foreach (var work in hazard.MetBy)
                names.Must(work.Value.Thing, Meeting(work.Value.Verb), work.Value.Verb.Spelled());
        }
    }

    private static NameKind Meeting(FactWord verb) => verb switch
    {
        FactWord.Lift or FactWord.Land => NameKind.Load,
        FactWord.Drain or FactWord.Fill => NameKind.Space,
        FactWord.Test => NameKind.Test,
        FactWord.Measure or FactWord.Inspect => NameKind.Reading,
        FactWord.Place or FactWord.Recover => NameKind.Placed,
        FactWord.Loosen or FactWord.Snug or FactWord.Tighten => NameKind.Fasteners,
        _ => NameKind.Handled,
    };
}
