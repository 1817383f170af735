using System.Collections.Immutable;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;
using Witnessmark.Reading.Shapes;

namespace Witnessmark.Reading.Sheets;

/// <summary>A list of tools: what is on a truck or in a shop.</summary>
internal static class ToolSheet
{
    public const string Key = "tools";

    private static readonly Shape WrenchShape = new(
        "wrench",
        "a wrench",
        Row.Word("kind", ["torque wrench", "impact wrench", "adapter"], "what it is").Must,
        Row.Range("range", "70 to 340 N·m", "what it can be set to", "torque"),
        Row.Quantity("scale", "5 N·m", "one division of its scale", "torque"),
        Row.Quantity("length", "0.75 m", "centre of drive to centre of grip", "length"),
        Row.Quantity("extension", "120 mm", "of an adapter: centre of drive to centre of jaw", "length").OrZero,
        Row.Quantity("angle", "0 deg", "of an adapter: 0 in line, 90 across", "angle").OrZero,
        Row.Text("use", "loosening only", "what it is for"),
        Row.Basis);

    private static readonly Shape GaugeShape = new(
        "gauge",
        "a gauge",
        Row.Text("measures", "length", "what it measures"),
        Row.Range("range", "0 to 25 mm", "from where to where"),
        Row.Quantity("resolution", "0.01 mm", "the smallest difference that it shows"),
        Row.YesNo("calibrated", "whether it is under calibration"),
        Row.Basis);

    private static readonly Shape ChartShape = new("crane-chart", "the chart")
    {
        Other = Row.Quantity("3.0 m", "2200 kg", "what the crane lifts at this radius", "mass"),
        OtherKeys = new SizeForm(Size.Quantity, "length", LeastSize.Anything),
    };

    private static readonly Shape GearShape = new(
        "lifting-gear",
        "lifting gear",
        Row.Below("chart", ChartShape, "{3.0 m: 2200 kg, 4.0 m: 1600 kg}", "radius to capacity"),
        Row.Text("driven-by", "remote", "how a crane is driven"),
        Row.Text("kind", "bottle jack", "what it is"),
        Row.Quantity("mass", "6 kg", "its own mass", "mass"),
        Row.Quantity("rated", "1000 kg", "what it bears", "mass"),
        Row.Count("legs", "2", "legs of a sling"),
        Row.Text("size", "0.6 m square", "how large it is"),
        Row.Basis);

    private static readonly Shape ContainerShape = new(
        "container",
        "a container",
        Row.Text("for", "gear oil", "what goes into it"),
        Row.Quantity("volume", "12 L", "how much it takes", "volume"),
        Row.Text("wording", "Used Oil - gear", "what its label says"),
        Row.Basis);

    private static readonly Shape OtherShape = new(
        "other-tool",
        "a tool",
        Row.Text("kind", "marking", "what it is"),
        Row.Text("for", "gear oil", "what it is for"),
        Row.Name("substitute", "pin-spacers", "what may be taken in its place"),
        Row.Name("extra-hazard", "spring-pin", "the hazard that this then brings"),
        Row.Basis);

    public static readonly Shape Shape = new(
        "tools",
        "the tool list",
        Row.Id(Key, "crane-truck", "its name").Must,
        Row.Text("title", "Crane truck 2", "what people call it"),
        Row.Each("wrenches", WrenchShape, "{kind: torque wrench, range: 70 to 340 N·m, scale: 5 N·m}", "what tightens and loosens"),
        Row.Each("gauges", GaugeShape, "{measures: length, range: 0 to 25 mm, resolution: 0.01 mm}", "what measures"),
        Row.Each("lifting", GearShape, "{rated: 1000 kg, mass: 6 kg}", "cranes, slings, jacks, stands"),
        Row.Each("containers", ContainerShape, "{for: gear oil, volume: 12 L}", "what takes what is drained"),
        Row.Each("others", OtherShape, "{kind: marking}", "everything else"),
        Row.Basis);

    /// <summary>The list, or null when it has no name.</summary>
    public static ToolList? Read(SourceText source, DataMap map, FindingList findings)
    {
        var sheet = new Fields(map, Shape, findings);
        if (sheet.Text(Key) is not { } id)
            return null;
        var list = new ToolList(source, id, map)
        {
            Title = sheet.Text("title"),
            Wrenches = new(sheet.Each("wrenches", Wrench)),
            Gauges = new(sheet.Each("gauges", Gauge)),
            Lifting = new(sheet.Each("lifting", Gear)),
            Containers = new(sheet.Each("containers", Container)),
            Others = new(sheet.Each("others", Other)),
        };
        sheet.Done();
        return list;
    }

    private static Wrench Wrench(Located<string> id, Fields tool) => new(id, tool.Map)
    {
        Kind = tool.Text("kind"),
        Range = tool.Range("range"),
        Scale = tool.Quantity("scale"),
        Length = tool.Quantity("length"),
        Extension = tool.Quantity("extension"),
        Angle = tool.Quantity("angle"),
        Use = tool.Text("use"),
    };

    private static Gauge Gauge(Located<string> id, Fields tool) => new(id, tool.Map)
    {
        Measures = tool.Text("measures"),
        Range = tool.Range("range"),
        Resolution = tool.Quantity("resolution"),
        Calibrated = tool.YesNo("calibrated"),
    };

    private static LiftingGear Gear(Located<string> id, Fields tool) => new(id, tool.Map)
    {
        Chart = Chart(tool),
        DrivenBy = tool.Text("driven-by"),
        Kind = tool.Text("kind"),
        Mass = tool.Quantity("mass"),
        Rated = tool.Quantity("rated"),
        Legs = tool.Count("legs"),
        Size = tool.Text("size"),
    };

    /// <summary>Radius to capacity: <c>{3.0 m: 2200 kg, 4.0 m: 1600 kg}</c></summary>
    private static ImmutableArray<(Located<Quantity> Radius, Located<Quantity> Capacity)> Chart(Fields tool)
    {
        if (tool.Below("chart", $"the chart of {tool.What}") is not { } chart)
            return [];
        var rows = ImmutableArray.CreateBuilder<(Located<Quantity>, Located<Quantity>)>();
        foreach (var entry in chart.Map.Entries)
            if (chart.KeyAsQuantity(entry.Key) is { } radius && chart.Quantity(entry.Key.Value) is { } capacity)
                rows.Add((radius, capacity));
        return rows.ToImmutable();
    }

    private static Container Container(Located<string> id, Fields tool) => new(id, tool.Map)
    {
        For = tool.Text("for"),
        Volume = tool.Quantity("volume"),
        Wording = tool.Text("wording"),
    };

    private static OtherTool Other(Located<string> id, Fields tool) => new(id, tool.Map)
    {
        Kind = tool.Text("kind"),
        For = tool.Text("for"),
        Substitute = tool.Text("substitute"),
        ExtraHazard = tool.Text("extra-hazard"),
    };
}
