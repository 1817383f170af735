using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;

namespace Witnessmark.Reading.Sheets;

internal static class PartReader
{
    public static Items<PartKind> Parts(Fields sheet) => new(sheet.Each("parts", "{count: 1}", One));

    private static PartKind One(Located<string> id, Fields part)
    {
        var item = new PartKind(id, part.Map)
        {
            Count = part.Count("count", "9"),
            Mark = part.Name("mark", "D"),
            Thickness = part.Toleranced("thickness", "5.00 ± 0.08 mm", "length"),
            WornAt = part.Quantity("worn-at", "4.60 mm", "length"),
            Spline = part.OneOf("spline", "inner", "outer"),
            FacedSide = part.OneOf("faced-side", "one", "both", "none"),
            Reuse = part.OneOf("reuse", "free", "inspect", "never"),
            Replace = part.OneOf("replace", "as a set", "one by one"),
            What = part.Text("what", "inner and outer seal with back-up ring"),
            Basis = part.Text("basis", "maker data"),
        };
        part.List("between", "[gear oil, hydraulic oil]");
        return item;
    }
}
