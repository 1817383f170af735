using Witnessmark.Engineering.Shims;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;
using Witnessmark.Rendering.Figures;

namespace Witnessmark.Rendering.Site.Drawings;

/// <summary>The pack that the machine was built with, put together from the sizes in stock.</summary>
internal static class ShimDrawing
{
    /// <summary>Null when the sizes in stock do not make it.</summary>
    public static Drawing? Of(string id, ShimItem shims, ShimStock stock, Words words)
    {
        if (shims.AsBuilt is not { Value: var built } || stock.Pieces(built) is not { } pieces)
            return null;
        var pack = new ShimPack([.. pieces.Select((p, i) => new ShimPiece($"S{Say.Number(i + 1)}", p))], ShimPackMade.SumOf(pieces));
        return new Drawing(ShimStack.Draw(id, pack, words), $"{DeclaredName.Spoken(shims.Id.Value)}. {words.PackAsBuilt}");
    }
}
