using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;

namespace Witnessmark.Reading.Sheets;

internal static class ShimReader
{
    private const int MostPieces = 10;

    public static Items<ShimItem> Shims(Fields sheet) => new(sheet.Each("shims", "{sizes: [0.05 mm, 0.10 mm], thicker-is: looser, play: 0.05 to 0.15 mm}", One));

    private static ShimItem One(Located<string> id, Fields shims)
    {
        var item = new ShimItem(id, shims.Map)
        {
            What = shims.Text("what", "thin rings under the hub retainer"),
            Sizes = shims.Quantities("sizes", "0.05 mm", "length"),
            Most = shims.Count("most", "5", most: MostPieces),
            ThickerIs = shims.OneOf("thicker-is", "looser", "tighter"),
            Play = shims.Range("play", "0.05 to 0.15 mm", "length"),
            Target = shims.Quantity("target", "0.10 mm", "length"),
            AsBuilt = shims.Quantity("as-built", "1.85 mm", "length"),
            Plausible = shims.Range("plausible", "0.00 to 0.60 mm", "length"),
            Basis = shims.Text("basis", "maker data"),
        };
        shims.Needs("sizes", "play");
        return item;
    }
}
