using System.Collections.Immutable;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;

namespace Witnessmark.Reading.Sheets;

/// <summary>A list of tools: what is on a truck or in a shop.</summary>
internal static class ToolSheet
{
    public const string Key = "tools";

    /// <summary>The list, or null when it has no name.</summary>
    public static ToolList? Read(SourceText source, DataMap map, FindingList findings)
    {
        var sheet = new Fields(map, "the tool list", findings);
        if (sheet.Id(Key, "crane-truck") is not { } id)
            return null;
        var list = new ToolList(source, id, map)
        {
            Title = sheet.Text("title", "Crane truck 2"),
            Wrenches = new(sheet.Each("wrenches", "{kind: torque wrench, range: 70 to 340 N·m, scale: 5 N·m}", Wrench)),
            Gauges = new(sheet.Each("gauges", "{measures: length, range: 0 to 25 mm, resolution: 0.01 mm}", Gauge)),
            Lifting = new(sheet.Each("lifting", "{rated: 1000 kg, mass: 6 kg}", Gear)),
            Containers = new(sheet.Each("containers", "{for: gear oil, volume: 12 L}", Container)),
            Others = new(sheet.Each("others", "{kind: marking}", Other)),
        };
        sheet.Text("basis");
        sheet.Done();
        return list;
    }

    private static Wrench Wrench(Located<string> id, Fields tool)
    {
        var wrench = new Wrench(id, tool.Map)
        {
            Kind = tool.OneOf("kind", "torque wrench", "impact wrench", "adapter"),
            Range = tool.Range("range", "70 to 340 N·m", "torque"),
            Scale = tool.Quantity("scale", "5 N·m", "torque"),
            Length = tool.Quantity("length", "0.75 m", "length"),
            Extension = tool.Quantity("extension", "120 mm", "length"),
            Angle = tool.Quantity("angle", "0 deg", "angle"),
            Use = tool.Text("use", "loosening only"),
        };
        tool.Needs("kind");
        return wrench;
    }

    private static Gauge Gauge(Located<string> id, Fields tool) => new(id, tool.Map)
    {
        Measures = tool.Text("measures", "length"),
        Range = tool.Range("range", "0 to 25 mm"),
        Resolution = tool.Quantity("resolution", "0.01 mm"),
        Calibrated = tool.YesNo("calibrated"),
    };

    private static LiftingGear Gear(Located<string> id, Fields tool) => new(id, tool.Map)
    {
        Chart = Chart(tool),
        DrivenBy = tool.Text("driven-by", "remote"),
        Kind = tool.Text("kind", "bottle jack"),
        Mass = tool.Quantity("mass", "6 kg", "mass"),
        Rated = tool.Quantity("rated", "1000 kg", "mass"),
        Legs = tool.Count("legs", "2"),
        Size = tool.Text("size", "0.6 m square"),
    };

    /// <summary>Radius to capacity: <c>{3.0 m: 2200 kg, 4.0 m: 1600 kg}</c></summary>
    private static ImmutableArray<(Located<Quantity> Radius, Located<Quantity> Capacity)> Chart(Fields tool)
    {
        if (tool.Below("chart", $"the chart of {tool.What}", "{3.0 m: 2200 kg, 4.0 m: 1600 kg}") is not { } chart)
            return [];
        var rows = ImmutableArray.CreateBuilder<(Located<Quantity>, Located<Quantity>)>();
        foreach (var entry in chart.Map.Entries)
            if (chart.KeyAsQuantity(entry.Key, "3.0 m", "length") is { } radius && chart.Quantity(entry.Key.Value, "2200 kg", "mass") is { } capacity)
                rows.Add((radius, capacity));
        return rows.ToImmutable();
    }

    private static Container Container(Located<string> id, Fields tool) => new(id, tool.Map)
    {
        For = tool.Text("for", "gear oil"),
        Volume = tool.Quantity("volume", "12 L", "volume"),
        Wording = tool.Text("wording", "Used Oil - gear"),
    };

    private static OtherTool Other(Located<string> id, Fields tool) => new(id, tool.Map)
    {
        Kind = tool.Text("kind", "marking"),
        For = tool.Text("for", "gear oil"),
        Substitute = tool.Name("substitute", "pin-spacers"),
        ExtraHazard = tool.Name("extra-hazard", "spring-pin"),
    };
}
