using System.Collections.Immutable;

namespace Witnessmark.Language.Model;

/// <summary>Everything of a workshop, read and bound: what rules, proofs and renderers work on.</summary>
public sealed record Library(
    Workshop Workshop,
    Items<Machine> Machines,
    Items<ToolList> ToolLists,
    Items<Procedure> Procedures) : Keeper
{
    public Items<Translation> Translations { get; init; } = Items<Translation>.None;

    /// <summary>Released versions and issued copies; empty where nobody has released anything.</summary>
    public Register Register { get; init; } = Register.Empty;

    /// <summary>A file that declares what others use could not be read at all: what is missing in them has that one cause.</summary>
    public bool LacksAFile { get; init; }

    /// <summary>How its names and texts read on a sheet.</summary>
    public Tongue Tongue { get; init; } = Tongue.AsWritten;

    /// <summary>Procedures and jobs whose id appears more than once are findings of the reader.</summary>
    public Procedure? Procedure(string id) => Procedures.Find(id);

    /// <summary>The words of what has that id, in the language; null when nobody has translated it.</summary>
    public Translation? Translation(string id, string language) => Translations.Find(Model.Translation.IdOf(id, language));

    public Scope ScopeOf(Procedure procedure) => new(this, procedure, procedure.Machine is { } m ? Machines.Find(m.Value) : null);
}

/// <summary>What the names in one procedure stand for: its own items first, then its machine's, its tools', the workshop's.</summary>
public sealed record Scope : Keeper
{
    private readonly ImmutableArray<ToolList> _toolLists;

    public Scope(Library library, Procedure procedure, Machine? machine)
    {
        Library = library;
        Procedure = procedure;
        Machine = machine;
        _toolLists = [.. procedure.UsesTools.Select(t => library.ToolLists.Find(t.Value)).OfType<ToolList>()];
    }

    public Library Library { get; }

    public Procedure Procedure { get; }

    /// <summary>Null for a common part: its things come from whoever performs it.</summary>
    public Machine? Machine { get; }

    public ImmutableArray<ToolList> ToolLists => _toolLists;

    public FastenerGroup? Fasteners(string name) => Machine?.Fasteners.Find(name);

    public PartKind? Part(string name) => Machine?.Parts.Find(name);

    public PartStack? Stack(string name) => Machine?.Stacks.Find(name);

    public ShimItem? Shims(string name) => Machine?.Shims.Find(name);

    public ReadingItem? Reading(string name) => Procedure.Readings.Find(name) ?? Machine?.Readings.Find(name);

    public WorkedValue? Value(string name) => Procedure.Values.Find(name) ?? Machine?.Values.Find(name);

    public TestItem? Test(string name) => Procedure.Tests.Find(name) ?? Machine?.Tests.Find(name);

    public Hazard? Hazard(string name) => Procedure.Hazards.Find(name) ?? Machine?.Hazards.Find(name);

    public LoadItem? Load(string name) => Machine?.Loads.Find(name);

    public FluidSpace? Space(string name) => Machine?.Spaces.Find(name);

    public CallLine? Call(string name) => Procedure.Calls.Find(name) ?? Library.Workshop.Calls.Find(name);

    /// <summary>By kind or by tag.</summary>
    public DeviceKind? Device(string nameOrTag) =>
        Procedure.Devices.Find(nameOrTag) ?? Machine?.Devices.Find(nameOrTag) ?? DeviceByTag(nameOrTag);

    public IItem? Tool(string name) => _toolLists.Select(t => t.Find(name)).FirstOrDefault(t => t is not null);

    public Wrench? Wrench(string name) => Tool(name) as Wrench;

    public bool IsRole(string name) => Library.Workshop.Roles.Find(name) is not null;

    /// <summary>Whether it is <c>{name}</c> of a parameter that this common part takes.</summary>
    public Parameter? Parameter(string written) =>
        written is ['{', .. var name, '}'] ? Procedure.Takes.FirstOrDefault(p => p.Name.Value == name) : null;

    private DeviceKind? DeviceByTag(string tag) =>
        Procedure.Devices.Concat(Machine?.Devices ?? Items<DeviceKind>.None).FirstOrDefault(d => d.Tags.Any(t => t.Value == tag));
}
