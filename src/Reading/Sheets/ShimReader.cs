using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;
using Witnessmark.Reading.Shapes;

namespace Witnessmark.Reading.Sheets;

internal static class ShimReader
{
    private static readonly Shape Shape = new(
        "shims",
        "shims",
        Row.Text("what", "thin rings under the hub retainer", "what exactly they are"),
        Row.List("sizes", "[0.05 mm, 0.10 mm]", "thicknesses in stock", new SizeForm(Size.Quantity, "length", LeastSize.AboveZero), most: 24).Must,
        Row.Count("most", "5", "pieces in one pack; 5 when not written", most: 10),
        Row.Word("thicker-is", ["looser", "tighter"], "what a thicker pack makes of the play"),
        Row.Range("play", "0.05 to 0.15 mm", "the play that is accepted", "length").Must,
        Row.Quantity("target", "0.10 mm", "the play that is aimed at; its middle when not written", "length").OrZero,
        Row.Quantity("as-built", "1.85 mm", "thickness of the whole pack as the machine was built", "length"),
        Row.Range("plausible", "0.00 to 0.60 mm", "plays that can be measured with that pack in", "length"),
        Row.Basis);

    public static readonly Row Section = Row.Each("shims", Shape, "{sizes: [0.05 mm, 0.10 mm], thicker-is: looser, play: 0.05 to 0.15 mm}", "thin rings put together to one pack that sets a play");

    public static Items<ShimItem> Shims(Fields sheet) => new(sheet.Each(Section.Key, One));

    private static ShimItem One(Located<string> id, Fields shims) => new(id, shims.Map)
    {
        What = shims.Text("what"),
        Sizes = shims.Quantities("sizes"),
        Most = shims.Count("most"),
        ThickerIs = shims.Text("thicker-is"),
        Play = shims.Range("play"),
        Target = shims.Quantity("target"),
        AsBuilt = shims.Quantity("as-built"),
        Plausible = shims.Range("plausible"),
        Basis = shims.Text("basis"),
    };
}
