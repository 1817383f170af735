using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Reading.References;

/// <summary>Holds the names that a data sheet uses against those that it declares.</summary>
internal static class SheetCheck
{
    public static void Check(Machine machine, NameShelf shelf, FindingList findings)
    {
        var names = new NameCheck(shelf.BookOf(machine), _ => null, findings);
        var conditions = new ConditionCheck(names, new PlaceCheck(names, []));
        foreach (var state in machine.States)
        {
            foreach (var kind in state.AtEach)
                names.Must(kind, NameKind.PlaceKind, "at");
            Optional(state.ProvedBy, NameKind.Reading, "proved-by", names);
        }
        foreach (var condition in Conditions(machine))
            conditions.Check(condition.Value);
        var interlocks = new InterlockCheck(names, conditions);
        foreach (var interlock in machine.Interlocks)
            interlocks.Check(interlock);
        foreach (var happening in machine.States.SelectMany(s => s.LostAfter).Concat(machine.Tests.SelectMany(t => t.LostAfter)))
            interlocks.Check(happening);
        foreach (var group in machine.Fasteners)
            Optional(group.AtEach, NameKind.PlaceKind, "at", names);
        foreach (var opening in machine.Openings)
            Optional(opening.CoveredBy, NameKind.Device, "covered-by", names);
        foreach (var part in machine.Stacks.SelectMany(s => s.Order).SelectMany(r => r.Pieces).Select(p => p.Part))
            names.Must(part, NameKind.Part, "order");
        ToolsOf(machine, names);
        new OwnItemsCheck(names).Check(machine.Readings, machine.Tests, machine.Hazards, machine.Devices);
    }

    private static IEnumerable<Located<Condition>> Conditions(Machine machine) =>
    [
        .. machine.Conditions.SelectMany(c => c.All),
        .. machine.States.SelectMany(s => s.LostWhen),
        .. machine.Openings.Select(o => o.OpenWhen).OfType<Located<Condition>>(),
    ];

    /// <summary>Without any tool list nothing is known about tools.</summary>
    private static void ToolsOf(Machine machine, NameCheck names)
    {
        if (!names.Book.Knows(NameKind.ToolList))
            return;
        foreach (var load in machine.Loads)
            Optional(load.Gear, NameKind.Tool, "gear", names);
        foreach (var space in machine.Spaces)
            Optional(space.DrainsInto, NameKind.Placed, "drains-into", names);
    }

    private static void Optional(Located<string>? name, NameKind kinds, string takes, NameCheck names)
    {
        if (name is { } written)
            names.Must(written, kinds, takes);
    }
}
