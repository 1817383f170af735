using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;

namespace Witnessmark.Reading.Sheets;

internal static class FastenerReader
{
    public static Items<FastenerGroup> Fasteners(Fields sheet) => new(sheet.Each("fasteners", "{count: 12, thread: M16x2, torque: 235 ± 12 N·m}", One));

    private static FastenerGroup One(Located<string> id, Fields group)
    {
        var item = new FastenerGroup(id, group.Map)
        {
            Count = group.Count("count", "12"),
            AtEach = group.Name("at", "line"),
            Thread = group.Text("thread", "M16x2") is { } thread ? ThreadReader.Read(thread, group.Findings) : null,
            Length = group.Quantity("length", "55 mm", "length"),
            PitchCircle = group.Quantity("pitch-circle", "330 mm", "length"),
            AcrossFlats = group.Quantity("across-flats", "24 mm", "length"),
            PropertyClass = group.Text("class", "\"10.9\""),
            Condition = group.OneOf("condition", "dry", "oiled", "paste"),
            NutFactor = group.Number("k", "0.15"),
            ProofFraction = group.Number("proof-fraction", "0.70"),
            Torque = group.Toleranced("torque", "235 ± 12 N·m", "torque"),
            Reuse = group.OneOf("reuse", "free", "inspect", "never"),
            FitsOneWay = group.Text("fits-one-way", "offset dowel"),
            Passes = PassReader.Passes(group),
            Sequence = Sequence(group),
            Basis = group.Text("basis", "maker data"),
        };
        group.OneOf("pattern", "star", "circular");
        return item;
    }

    private static ImmutableArray<Located<int>> Sequence(Fields group) =>
        [.. group.List("sequence", "[1, 7, 4, 10]").Select(n => PassReader.BoltNumber(n, group)).OfType<Located<int>>()];
}
