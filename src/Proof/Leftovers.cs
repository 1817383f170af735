using Witnessmark.Language.Model;

namespace Witnessmark.Proof;

/// <summary>What the end of a part has to name: devices that are still in; of a job, whatever is not as it came.</summary>
internal sealed class Leftovers(Situation situation, Ways ways, Worths worths, Breaches breaches)
{
    private const int Deepest = 8;

    public void Look(Names names, ProcedurePart part, bool isJob, Moment last)
    {
        var named = part.Facts.Where(f => f.Word is FactWord.EndsWith or FactWord.StartsWith).SelectMany(f => f.Conditions.SelectMany(c => c.All).SelectMany(c => Named(c, f.Word, names, 0))).ToHashSet(StringComparer.Ordinal);
        foreach (var kind in names.Devices(null))
            foreach (var tag in names.Tags(kind.Id.Value).Where(t => !named.Contains(t) && situation.Changes(t).Count > 0))
                breaches.Cell(BreachKind.LeftIn, tag, On(situation.Alive, tag, w => w == "placed"), last);
        if (!isJob || names.Machine is not { } machine)
            return;
        foreach (var state in machine.States.Where(s => s.ProvedBy is null && s.LostWhen.IsEmpty && !s.Values.IsEmpty))
            foreach (var cell in Touched(state.Id.Value).Where(c => !named.Contains(c)))
                breaches.Cell(BreachKind.NotNormal, cell, On(situation.Alive, cell, w => w != state.Values[0].Value), last);
        foreach (var cell in machine.Parts.Names.Concat(machine.Fasteners.Names).SelectMany(Touched).Where(c => !named.Contains(c)))
            breaches.Cell(BreachKind.NotNormal, cell, On(situation.Alive, cell, w => w is not ("fitted" or "torqued")), last);
        foreach (var cell in machine.Spaces.Names.Append(Names.Hook).SelectMany(Touched).Where(c => !named.Contains(c)))
            breaches.Cell(BreachKind.NotNormal, cell, On(situation.Alive, cell, w => w is not ("full" or "none")), last);
    }

    private IEnumerable<string> Touched(string thing) => situation.Cells.Where(c => (c == thing || c.StartsWith($"{thing} at ", StringComparison.Ordinal)) && situation.Changes(c).Count > 0).ToList();

    /// <summary>Ways on which it is known to be so.</summary>
    private int On(int alive, string cell, Func<string, bool> wrong) =>
        ways.And(alive, ways.Mapped(situation.Of(cell), v => worths[v] is var worth && worth.Whole is { } whole ? whole != Worths.Unknown && wrong(whole) ? Ways.Yes : Ways.No : Ways.Yes));

    /// <summary>Cells that a contract speaks of. What is so at the start is no leftover of this part, unless it is said otherwise.</summary>
    private static IEnumerable<string> Named(Clause clause, FactWord word, Names names, int depth) => clause switch
    {
        DevicesClause when word == FactWord.StartsWith => [],
        DevicesClause d => names.Devices(d.ThatBlock?.Value).SelectMany(k => names.Tags(k.Id.Value)),
        BundleClause b when depth < Deepest && names.Machine?.Conditions.Find(b.Name.Value) is { } bundle => bundle.All.SelectMany(c => c.Value.All).SelectMany(c => Named(c, word, names, depth + 1)),
        StateClause s when word == FactWord.StartsWith => [],
        StateClause s => names.Device(s.Thing.Value) is not null ? names.Tags(s.Thing.Value) : names.Cells(s.Thing.Value, s.AtPlace?.Value),
        _ => [],
    };
}
