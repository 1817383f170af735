using System.Collections.Immutable;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;

namespace Witnessmark.Language.Model;

/// <summary>What is on a truck or in a shop. Due dates of calibration are living facts and live elsewhere.</summary>
public sealed record ToolList(SourceText Source, Located<string> Id, DataNode Node) : WorkshopFile(Source, Node), IItem
{
    public Located<string>? Title { get; init; }
    public Items<Wrench> Wrenches { get; init; } = Items<Wrench>.None;
    public Items<Gauge> Gauges { get; init; } = Items<Gauge>.None;
    public Items<LiftingGear> Lifting { get; init; } = Items<LiftingGear>.None;
    public Items<Container> Containers { get; init; } = Items<Container>.None;
    public Items<OtherTool> Others { get; init; } = Items<OtherTool>.None;

    public IItem? Find(string name) =>
        Wrenches.Find(name) ?? Gauges.Find(name) ?? Lifting.Find(name) ?? Containers.Find(name) ?? (IItem?)Others.Find(name);

    public IEnumerable<string> Names => [.. Wrenches.Names, .. Gauges.Names, .. Lifting.Names, .. Containers.Names, .. Others.Names];
}

/// <summary>A torque wrench, impact wrench or adapter (crow-foot).</summary>
public sealed record Wrench(Located<string> Id, DataNode Node) : IItem
{
    /// <summary>torque wrench, impact wrench or adapter.</summary>
    public Located<string>? Kind { get; init; }
    public Located<QuantityRange>? Range { get; init; }

    /// <summary>One division of its scale.</summary>
    public Located<Quantity>? Scale { get; init; }

    /// <summary>Centre of drive to centre of grip.</summary>
    public Located<Quantity>? Length { get; init; }

    /// <summary>Of an adapter: centre of drive to centre of jaw.</summary>
    public Located<Quantity>? Extension { get; init; }

    /// <summary>Of an adapter: 0 in line, 90 across.</summary>
    public Located<Quantity>? Angle { get; init; }
    public Located<string>? Use { get; init; }

    public bool IsTorqueWrench => Kind?.Value == "torque wrench";

    public bool IsAdapter => Kind?.Value == "adapter";
}

public sealed record Gauge(Located<string> Id, DataNode Node) : IItem
{
    public Located<string>? Measures { get; init; }
    public Located<QuantityRange>? Range { get; init; }
    public Located<Quantity>? Resolution { get; init; }
    public Located<bool>? Calibrated { get; init; }
}

public sealed record LiftingGear(Located<string> Id, DataNode Node) : IItem
{
    public ImmutableArray<(Located<Quantity> Radius, Located<Quantity> Capacity)> Chart { get; init; } = [];
    public Located<string>? DrivenBy { get; init; }
    public Located<string>? Kind { get; init; }
    public Located<Quantity>? Mass { get; init; }
    public Located<Quantity>? Rated { get; init; }
    public Located<int>? Legs { get; init; }
    public Located<string>? Size { get; init; }
}

public sealed record Container(Located<string> Id, DataNode Node) : IItem
{
    public Located<string>? For { get; init; }
    public Located<Quantity>? Volume { get; init; }
    public Located<string>? Wording { get; init; }
}

public sealed record OtherTool(Located<string> Id, DataNode Node) : IItem
{
    public Located<string>? Kind { get; init; }
    public Located<string>? For { get; init; }
    public Located<string>? Substitute { get; init; }
    public Located<string>? ExtraHazard { get; init; }
}
