using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Reading.Data;

namespace Witnessmark.Reading.Sheets;

internal static class ShimReader
{
    private const int MostPieces = 10;
    private const int MostSizes = 24;

    public static Items<ShimItem> Shims(Fields sheet) => new(sheet.Each("shims", "{sizes: [0.05 mm, 0.10 mm], thicker-is: looser, play: 0.05 to 0.15 mm}", One));

    private static ShimItem One(Located<string> id, Fields shims)
    {
        var item = new ShimItem(id, shims.Map)
        {
            What = shims.Text("what", "thin rings under the hub retainer"),
            Sizes = Sizes(shims),
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

    private static ImmutableArray<Located<Quantity>> Sizes(Fields shims)
    {
        var sizes = shims.Quantities("sizes", "0.05 mm", "length");
        if (sizes.Length > MostSizes)
            shims.WrongKind(shims.Map.Find("sizes")!, $"a list of {Say.Number(sizes.Length)}", $"a list of at most {Say.Number(MostSizes)} sizes", "[0.05 mm, 0.10 mm]");
        else if (sizes.FirstOrDefault(s => s.Value.Number <= 0) is { Value.Unit: not null } none)
            shims.WrongKind(shims.Map.Find("sizes")!, $"a list with `{none.At.Text}` in it", "a list of sizes above zero", "[0.05 mm, 0.10 mm]");
        else
            return sizes;
        return [];
    }
}
