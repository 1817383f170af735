using Witnessmark.Language.Model;

namespace Witnessmark.Proof;

/// <summary>What a part takes for granted at its start, and what it owes at its end.</summary>
internal sealed class Contracts(Proving proving)
{
    private const int Deepest = 8;

    /// <summary>The part that is proved begins as it says.</summary>
    public void Begin(Frame frame)
    {
        proving.Situation.Write(Names.Hook, Ways.Yes, proving.Ways.Always(proving.Worths.Number("none")), null);
        foreach (var condition in Of(frame.Part, FactWord.StartsWith))
            Agree(condition, frame, Ways.Yes, 0);
    }

    /// <summary>A part that is performed: what it takes for granted has to be so.</summary>
    public void Perform(Frame inside, Doing doing)
    {
        foreach (var start in Of(inside.Part, FactWord.StartsWith))
            proving.Breaches.Must(BreachKind.Contract, null, start, doing.Guard, proving.Work.Must(doing with { Names = inside.Names }), inside.Names, doing.At);
    }

    /// <summary>The part that is proved ends as it says, with nothing left in that it does not name.</summary>
    public void End(Frame frame, bool isJob, Moment last)
    {
        var doing = new Doing(last, frame.Names, proving.Situation.Alive, []);
        foreach (var promise in Of(frame.Part, FactWord.EndsWith))
            proving.Breaches.Must(BreachKind.Promise, null, promise, doing.Guard, proving.Work.Must(doing), frame.Names, last);
        new Leftovers(proving.Situation, proving.Ways, proving.Worths, proving.Breaches).Look(frame.Names, frame.Part, isJob, last);
    }

    private static IEnumerable<Condition> Of(ProcedurePart part, FactWord word) => part.Facts.Where(f => f.Word == word).SelectMany(f => f.Conditions);

    /// <summary>What a contract says is so.</summary>
    private void Agree(Condition condition, Frame frame, int guard, int depth)
    {
        foreach (var clause in condition.All)
            switch (clause)
            {
                case StateClause { Negated: false } said:
                    var values = said.Values.Select(v => proving.Worths.Read(Names.One(frame.Names.Name(v.Value)))).ToList();
                    foreach (var cell in frame.Names.Device(said.Thing.Value) is null ? frame.Names.Cells(said.Thing.Value, said.AtPlace?.Value) : frame.Names.Tags(said.Thing.Value))
                        proving.Situation.Write(cell, guard, values.Count == 1 ? proving.Ways.Always(values[0]) : proving.Situation.Ask(null, cell, [.. said.Values.Select(v => v.Value)]), null);
                    break;
                case BundleClause bundle when depth < Deepest:
                    foreach (var line in frame.Names.Machine?.Conditions.Find(bundle.Name.Value)?.All ?? [])
                        Agree(line.Value, frame, guard, depth + 1);
                    break;
                case DevicesClause { Every: true } devices:
                    foreach (var tag in frame.Names.Devices(devices.ThatBlock?.Value).SelectMany(k => frame.Names.Tags(k.Id.Value)))
                        proving.Situation.Write(tag, guard, proving.Ways.Always(proving.Worths.Number(devices.Value.Value)), null);
                    break;
            }
    }
}
