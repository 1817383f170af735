using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;
using Witnessmark.Reading.Shapes;

namespace Witnessmark.Reading.Sheets;

internal static class PartReader
{
    private static readonly Shape Shape = new(
        "part",
        "a part",
        Row.Count("count", "9", "how many there are"),
        Row.Name("mark", "D", "letter of its numbers: D1, D2"),
        Row.Toleranced("thickness", "5.00 ± 0.08 mm", "thickness as new", "length"),
        Row.Quantity("worn-at", "4.60 mm", "thickness below which it is worn", "length"),
        Row.Word("spline", ["inner", "outer"], "where its teeth are"),
        Row.Word("faced-side", ["one", "both", "none"], "sides with a facing"),
        Row.Word("reuse", ["free", "inspect", "never"], "whether it may go in again"),
        Row.Word("replace", ["as a set", "one by one"], "what is changed when one is bad"),
        Row.Text("what", "inner and outer seal with back-up ring", "what exactly it is"),
        Row.List("between", "[gear oil, hydraulic oil]", "what it keeps apart"),
        Row.Basis);

    public static readonly Row Section = Row.Each("parts", Shape, "{count: 1}", "what is taken off and fitted");

    public static Items<PartKind> Parts(Fields sheet) => new(sheet.Each(Section.Key, One));

    private static PartKind One(Located<string> id, Fields part) => new(id, part.Map)
    {
        Count = part.Count("count"),
        Mark = part.Text("mark"),
        Thickness = part.Toleranced("thickness"),
        WornAt = part.Quantity("worn-at"),
        Spline = part.Text("spline"),
        FacedSide = part.Text("faced-side"),
        Reuse = part.Text("reuse"),
        Replace = part.Text("replace"),
        What = part.Text("what"),
        Between = part.List("between"),
        Basis = part.Text("basis"),
    };
}
