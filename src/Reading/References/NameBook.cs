using System.Collections.Immutable;
using Witnessmark.Language.Model;

namespace Witnessmark.Reading.References;

/// <summary>All names that can be used in one place, with what they stand for.</summary>
internal sealed class NameBook
{
    /// <summary>Counted without being declared: what is left on the paper, strokes, tools, rags.</summary>
    private static readonly ImmutableArray<string> Tallies = ["left-over", "pedal-strokes", "tools", "rags"];

    private readonly ImmutableArray<Declared> _all;
    private readonly ILookup<string, Declared> _byName;

    private NameBook(IEnumerable<Declared> all)
    {
        _all = [.. all];
        _byName = _all.ToLookup(d => d.Name, StringComparer.Ordinal);
    }

    public IEnumerable<Declared> Find(string name) => _byName[name];

    public IEnumerable<Declared> Of(NameKind kinds) => _all.Where(d => (d.Kind & kinds) != 0);

    public bool Knows(NameKind kinds) => Of(kinds).Any();

    /// <summary>What a procedure can name: its own items, its machine's, its tools', the workshop's, and what was decided.</summary>
    public static NameBook Of(Scope scope)
    {
        var procedure = scope.Procedure;
        // a common part is done with the tools of whoever performs it; a list that is not there is one finding, not one a tool
        IEnumerable<ToolList> tools = procedure.UsesTools.IsEmpty || scope.ToolLists.Length < procedure.UsesTools.Length ? scope.Library.ToolLists : scope.ToolLists;
        var seen = scope.Library.Procedures.Where(p => p == procedure || (p.Machine is { } m && m.Value == procedure.Machine?.Value));
        return new NameBook([
            .. Own(procedure),
            .. seen.SelectMany(Decisions),
            .. Shared(scope.Library, scope.Machine, tools),
            .. procedure.Crew.Select(c => Declared.Of(NameKind.Role, c.Role)),
        ]);
    }

    /// <summary>What a data sheet can name.</summary>
    public static NameBook Of(Machine machine, Library library) => new([
        .. library.Procedures.Where(p => p.Machine?.Value == machine.Id.Value).SelectMany(Decisions),
        .. Shared(library, machine, library.ToolLists),
    ]);

    private static IEnumerable<Declared> Shared(Library library, Machine? machine, IEnumerable<ToolList> tools) =>
    [
        .. machine is null ? [] : MachineNames.Of(machine),
        .. tools.SelectMany(Tools),
        .. Items(NameKind.Role, library.Workshop.Roles),
        .. Items(NameKind.Call, library.Workshop.Calls),
        .. Items(NameKind.Procedure, library.Procedures),
        .. Items(NameKind.Machine, library.Machines),
        .. Items(NameKind.ToolList, library.ToolLists),
        .. Tallies.Select(t => new Declared(NameKind.Tally, t, null, [])),
    ];

    private static IEnumerable<Declared> Own(Procedure procedure) =>
    [
        .. procedure.Readings.Select(MachineNames.Reading),
        .. procedure.Values.Select(MachineNames.Worked),
        .. procedure.Tests.Select(MachineNames.Test),
        .. procedure.Devices.SelectMany(MachineNames.Device),
        .. Items(NameKind.Hazard, procedure.Hazards),
        .. Items(NameKind.Call, procedure.Calls),
    ];

    /// <summary>Decisions of all procedures of the machine: whoever is performed sees what was decided before.</summary>
    private static IEnumerable<Declared> Decisions(Procedure procedure)
    {
        foreach (var step in procedure.Steps)
            if (step.Value<NameList>(FactWord.Decide) is { Names: [var name, ..] })
                yield return Declared.Of(NameKind.Decision, name, [.. step.All(FactWord.Outcome).Select(o => o.Value).OfType<OutcomeValue>().Select(o => o.Name.Value)]);
    }

    private static IEnumerable<Declared> Tools(ToolList list) =>
    [
        .. Items(NameKind.Tool, list.Wrenches),
        .. Items(NameKind.Tool, list.Gauges),
        .. Items(NameKind.Tool, list.Lifting),
        .. Items(NameKind.Tool, list.Others),
        .. list.Containers.Select(c => Declared.Of(NameKind.Container, c.Id, "stored", "placed")),
        .. Items(NameKind.Tool, list.Containers),
    ];

    private static IEnumerable<Declared> Items<T>(NameKind kind, Items<T> items)
        where T : class, IItem => items.Select(i => Declared.Of(kind, i.Id));
}
