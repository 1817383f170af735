using System.Collections.Frozen;
using System.Collections.Immutable;
using Witnessmark.Language.Model;

namespace Witnessmark.Reading.References;

/// <summary>The names of a whole library, each layer made once, from which the book of any one procedure or data sheet is put together.</summary>
internal sealed class NameShelf
{
    /// <summary>Counted without being declared: what is left on the paper, strokes, tools, rags.</summary>
    private static readonly ImmutableArray<string> Tallies = ["left-over", "pedal-strokes", "lever-strokes", "tools", "rags"];

    private readonly Library _library;
    private readonly NameLayer _workshop;
    private readonly FrozenDictionary<string, NameLayer> _machines;
    private readonly FrozenDictionary<string, NameLayer> _tools;

    /// <summary>Decisions of all procedures of a machine: whoever is performed sees what was decided before.</summary>
    private readonly FrozenDictionary<string, NameLayer> _decisions;

    /// <param name="decisions">Of each procedure, in the order of the library.</param>
    public NameShelf(Library library, ImmutableArray<ImmutableArray<Declared>> decisions)
    {
        _library = library;
        _workshop = new NameLayer(Workshop(library));
        _machines = library.Machines.ToFrozenDictionary(m => m.Id.Value, m => new NameLayer(MachineNames.Of(m)), StringComparer.Ordinal);
        _tools = library.ToolLists.ToFrozenDictionary(t => t.Id.Value, t => new NameLayer(Tools(t)), StringComparer.Ordinal);
        _decisions = library.Procedures.Zip(decisions).Where(p => p.First.Machine is not null)
            .GroupBy(p => p.First.Machine!.Value.Value, p => p.Second, StringComparer.Ordinal)
            .ToFrozenDictionary(g => g.Key, g => new NameLayer(g.SelectMany(d => d)), StringComparer.Ordinal);
    }

    /// <summary>What a procedure can name: its own items, its machine's, its tools', the workshop's, and what was decided.</summary>
    public NameBook BookOf(Scope scope)
    {
        var procedure = scope.Procedure;
        // a common part is done with the tools of whoever performs it; a list that is not there is one finding, not one a tool
        IEnumerable<ToolList> tools = procedure.UsesTools.IsEmpty || scope.ToolLists.Length < procedure.UsesTools.Length ? _library.ToolLists : scope.ToolLists;
        return new NameBook([
            new NameLayer(Own(procedure)),
            procedure.Machine is { } m ? _decisions[m.Value] : new NameLayer(Decisions(procedure)),
            .. Shared(scope.Machine, tools),
            new NameLayer(procedure.Crew.Select(c => Declared.Of(NameKind.Role, c.Role))),
        ]);
    }

    /// <summary>What a data sheet can name.</summary>
    public NameBook BookOf(Machine machine) => new([
        .. _decisions.TryGetValue(machine.Id.Value, out var decided) ? [decided] : ImmutableArray<NameLayer>.Empty,
        .. Shared(machine, _library.ToolLists),
    ]);

    private IEnumerable<NameLayer> Shared(Machine? machine, IEnumerable<ToolList> tools) =>
    [
        .. machine is null ? [] : ImmutableArray.Create(_machines[machine.Id.Value]),
        .. tools.Select(t => _tools[t.Id.Value]),
        _workshop,
    ];

    private static IEnumerable<Declared> Workshop(Library library) =>
    [
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

    public static ImmutableArray<Declared> Decisions(Procedure procedure)
    {
        ImmutableArray<Declared> decisions = [];
        foreach (var part in procedure.Parts)
            foreach (var section in part.Sections)
                foreach (var step in section.Steps)
                    if (step.Value<NameList>(FactWord.Decide) is { Names: [var name, ..] })
                        decisions = decisions.Add(Declared.Of(NameKind.Decision, name, Outcomes(step)));
        return decisions;
    }

    private static ImmutableArray<string> Outcomes(Step step) => [.. step.All(FactWord.Outcome).Select(o => o.Value).OfType<OutcomeValue>().Select(o => o.Name.Value)];

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
