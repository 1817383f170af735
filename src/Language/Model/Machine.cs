using System.Collections.Immutable;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;

namespace Witnessmark.Language.Model;

/// <summary>The data sheet of a machine: what every procedure for it shares.</summary>
public sealed record Machine(SourceText Source, Located<string> Id, DataNode Node) : WorkshopFile(Source, Node), IItem
{
    public Located<string>? Title { get; init; }
    public Located<string>? Basis { get; init; }
    public Located<SerialRange>? Serials { get; init; }

    /// <summary>Kinds of place and their names: wheel-end is FL, FR, CL …</summary>
    public ImmutableArray<PlaceKind> Places { get; init; } = [];

    public Items<Zone> Zones { get; init; } = Items<Zone>.None;
    public Items<StateItem> States { get; init; } = Items<StateItem>.None;
    public Items<NamedCondition> Conditions { get; init; } = Items<NamedCondition>.None;
    public Items<Interlock> Interlocks { get; init; } = Items<Interlock>.None;
    public Items<Opening> Openings { get; init; } = Items<Opening>.None;
    public Items<Hazard> Hazards { get; init; } = Items<Hazard>.None;
    public Items<DeviceKind> Devices { get; init; } = Items<DeviceKind>.None;
    public Items<FastenerGroup> Fasteners { get; init; } = Items<FastenerGroup>.None;
    public Items<PartKind> Parts { get; init; } = Items<PartKind>.None;
    public Items<PartStack> Stacks { get; init; } = Items<PartStack>.None;
    public Items<ShimItem> Shims { get; init; } = Items<ShimItem>.None;
    public Items<FluidSpace> Spaces { get; init; } = Items<FluidSpace>.None;
    public Items<ReadingItem> Readings { get; init; } = Items<ReadingItem>.None;
    public Items<WorkedValue> Values { get; init; } = Items<WorkedValue>.None;
    public Items<TestItem> Tests { get; init; } = Items<TestItem>.None;
    public Items<LoadItem> Loads { get; init; } = Items<LoadItem>.None;
    public MachineMasses Masses { get; init; } = MachineMasses.Unknown;
}

/// <summary>Serial numbers from … to …, compared as text of equal length or as numbers; leading zeros are kept.</summary>
public sealed record SerialRange(string From, string? To)
{
    public bool Contains(string serial) => Compare(serial, From) >= 0 && (To is null || Compare(serial, To) <= 0);

    public static int Compare(string a, string b)
    {
        var x = a.TrimStart('0');
        var y = b.TrimStart('0');
        return x.Length != y.Length ? x.Length.CompareTo(y.Length) : string.CompareOrdinal(x, y);
    }

    public override string ToString() => To is null ? $"from {From}" : $"from {From} to {To}";
}

public sealed record PlaceKind(Located<string> Name, ImmutableArray<Located<string>> Names);

public sealed record Zone(Located<string> Id, DataNode Node, string Text) : IItem;

public sealed record StateItem(Located<string> Id, DataNode Node) : IItem
{
    /// <summary>First value is the normal one.</summary>
    public ImmutableArray<Located<string>> Values { get; init; } = [];
    public ImmutableArray<Located<string>> AtEach { get; init; } = [];
    public Located<int>? Count { get; init; }
    public Located<string>? ProvedBy { get; init; }
    public ImmutableArray<Located<Condition>> LostWhen { get; init; } = [];

    /// <summary>Happenings that end it: <c>change of people</c>, <c>stop above 15 min</c>, <c>brake-line becomes open</c>.</summary>
    public ImmutableArray<Happening> LostAfter { get; init; } = [];
}

public sealed record NamedCondition(Located<string> Id, DataNode Node, ImmutableArray<Located<Condition>> All) : IItem;

/// <summary>A rule of the machine in one of four forms; proved by the proof of states, read and shown from the start.</summary>
public sealed record Interlock(Located<string> Id, DataNode Node) : IItem
{
    public Located<string>? Never { get; init; }

    /// <summary>What <see cref="Never"/> says; null when it cannot be read.</summary>
    public Condition? NeverWhen { get; init; }
    public Located<string>? Before { get; init; }

    /// <summary>What <see cref="Before"/> waits for: each by itself.</summary>
    public ImmutableArray<Happening> BeforeAny { get; init; } = [];
    public Located<string>? When { get; init; }
    public Condition? OnlyWhen { get; init; }
    public Located<string>? Requires { get; init; }
    public Condition? Needed { get; init; }
    public Located<string>? Every { get; init; }
    public StepsMeant? EveryStep { get; init; }
    public Located<string>? Has { get; init; }
    public ImmutableArray<Had> HasAll { get; init; } = [];
    public Located<string>? After { get; init; }
    public ImmutableArray<Happening> AfterAny { get; init; } = [];
    public Located<string>? Owes { get; init; }
    public Located<string>? ProveAgain { get; init; }
    public ImmutableArray<Located<string>> ProvedAgain { get; init; } = [];
    public Located<string>? Because { get; init; }
    public Located<string>? Basis { get; init; }
}

public sealed record Opening(Located<string> Id, DataNode Node, Located<Condition>? OpenWhen, Located<string>? CoveredBy) : IItem;

public sealed record DeviceKind(Located<string> Id, DataNode Node) : IItem
{
    public ImmutableArray<Located<string>> Tags { get; init; } = [];

    /// <summary>engine-start, travel, closing.</summary>
    public ImmutableArray<Located<string>> Blocks { get; init; } = [];
    public Located<string>? Wording { get; init; }
    public Located<Quantity>? Rated { get; init; }

    /// <summary>What it must hold against, in words with a number: <c>cooling relief 0.35 MPa</c>.</summary>
    public Located<string>? Against { get; init; }

    /// <summary>The state that it changes while it is placed.</summary>
    public DeviceTurn? Turns { get; init; }

    /// <summary><c>steel, yield 235 MPa</c></summary>
    public Located<string>? Material { get; init; }
    public Located<Quantity>? Thickness { get; init; }

    /// <summary>Of the opening that a round plate closes.</summary>
    public Located<Quantity>? Radius { get; init; }

    /// <summary>What it stands on: <c>0.6 m square</c>.</summary>
    public Located<string>? Pad { get; init; }

    /// <summary>The tool in whose place it is used.</summary>
    public Located<string>? SubstituteFor { get; init; }
}

/// <summary>Masses for jack and stand.</summary>
/// <param name="WheelEndStatic">What stands on one wheel end.</param>
/// <param name="LoadTransfer">By what it carries more while the other end is jacked; 1 when not written.</param>
public sealed record MachineMasses(Located<Quantity>? WheelEndStatic, Located<decimal>? LoadTransfer)
{
    public static readonly MachineMasses Unknown = new(null, null);
}

/// <summary><c>cooling-line open to blanked</c>: placing it makes <paramref name="To"/> of <paramref name="From"/>, recovering it makes it again what it was.</summary>
public sealed record DeviceTurn(Located<string> State, Located<string> From, Located<string> To, Location At)
{
    /// <summary>What a verb on the device makes of the state; null for a verb that leaves it where it is.</summary>
    public Located<string>? After(FactWord verb) => verb == FactWord.Place ? To : verb == FactWord.Recover ? From : null;
}

public sealed record FluidSpace(Located<string> Id, DataNode Node) : IItem
{
    public Located<string>? Fluid { get; init; }
    public Located<Quantity>? Holds { get; init; }
    public Located<string>? DrainsInto { get; init; }
    public Located<string>? FullWhen { get; init; }
}

public sealed record LoadItem(Located<string> Id, DataNode Node) : IItem
{
    public Located<Quantity>? Mass { get; init; }
    public Located<string>? Weighed { get; init; }
    public Located<string>? Gear { get; init; }
    public Located<Quantity>? Angle { get; init; }
    public Located<Quantity>? Radius { get; init; }
    public Located<string>? ByHand { get; init; }

    /// <summary>Somebody says that nobody weighed it: its mass counts more.</summary>
    public bool IsEstimated => Weighed?.Value == "no";
}
