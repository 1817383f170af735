using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;
using Witnessmark.Reading.Shapes;

namespace Witnessmark.Reading.Sheets;

internal static class FastenerReader
{
    public static readonly Row Pattern = Row.Word("pattern", ["star", "circular"], "the order around the circle");

    private static readonly Shape Shape = new(
        "fastener-group",
        "a group of fasteners",
        Row.Count("count", "12", "how many there are at one place"),
        Row.Name("at", "line", "the kind of place that has one such group each"),
        Row.Written("thread", ThreadReader.Form, "M16x2", "diameter and pitch, or size, threads to the inch and series: 5/8-11 UNC"),
        Row.Quantity("length", "55 mm", "length under the head", "length"),
        Row.Quantity("pitch-circle", "330 mm", "diameter of the circle through their centres", "length"),
        Row.Quantity("across-flats", "24 mm", "width of a head", "length"),
        Row.Text("class", "\"10.9\"", "property class of metric bolts, ISO 898-1"),
        Row.Text("grade", "\"8\"", "grade of bolts in inches, SAE J429"),
        Row.Word("condition", ["dry", "oiled", "paste"], "state of the threads for which the torque holds"),
        Row.Factor("k", "0.15", "nut factor K of T = K·d·F, for that state of the threads"),
        Row.Factor("proof-fraction", "0.70", "share of the proof load that is aimed at; 0.75 when not written"),
        Row.Toleranced("torque", "235 ± 12 N·m", "what the wrench is set to", "torque"),
        Row.Word("reuse", ["free", "inspect", "never"], "whether they may go in again"),
        Row.Text("fits-one-way", "offset dowel", "what makes the part fit one way only"),
        PassReader.Passes,
        Row.List("sequence", "[1, 7, 4, 10]", "bolt numbers in the order of tightening", PassReader.Bolt),
        Pattern,
        Row.Basis);

    public static readonly Row Section = Row.Each("fasteners", Shape, "{count: 12, thread: M16x2, torque: 235 ± 12 N·m}", "bolts, nuts and studs in groups");

    public static Items<FastenerGroup> Fasteners(Fields sheet) => new(sheet.Each(Section.Key, One));

    private static FastenerGroup One(Located<string> id, Fields group) => new(id, group.Map)
    {
        Count = group.Count("count"),
        AtEach = group.Text("at"),
        Thread = group.Text("thread") is { } thread ? ThreadReader.Read(thread, group.Findings) : null,
        Length = group.Quantity("length"),
        PitchCircle = group.Quantity("pitch-circle"),
        AcrossFlats = group.Quantity("across-flats"),
        PropertyClass = group.Text("class"),
        Grade = group.Text("grade"),
        Condition = group.Text("condition"),
        NutFactor = group.Factor("k"),
        ProofFraction = group.Factor("proof-fraction"),
        Torque = group.Toleranced("torque"),
        Reuse = group.Text("reuse"),
        FitsOneWay = group.Text("fits-one-way"),
        Passes = PassReader.Read(group),
        Sequence = [.. group.List("sequence").Select(n => PassReader.BoltNumber(n, group)).OfType<Located<int>>()],
        Basis = group.Text("basis"),
    };
}
