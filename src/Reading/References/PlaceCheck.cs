using Witnessmark.Language.Text;

namespace Witnessmark.Reading.References;

/// <summary>Holds <c>at CL</c>, <c>at each</c>, <c>at every line</c> against the places of the machine.</summary>
/// <param name="names">The book.</param>
/// <param name="loopKinds">Kinds of the loops around: <c>at {pass}</c> in <c>for-each: pass of {group}</c>.</param>
internal sealed class PlaceCheck(NameCheck names, IReadOnlyCollection<string> loopKinds)
{
    public void Check(Located<string> place)
    {
        // a common part without a machine is at whatever place its caller is
        if (place.Value == "each" || !names.Book.Knows(NameKind.PlaceKind))
            return;
        if (place.Value.StartsWith('{') && loopKinds.Contains(place.Value.Trim('{', '}')))
            return;
        var start = place.Value.LastIndexOf(' ') + 1;
        var name = Facts.TextPieces.Piece(place, start, place.Value.Length);
        if (start > 0)
            names.Must(name, NameKind.PlaceKind, place.Value[..(start - 1)]);
        else
            names.Must(name, NameKind.Place, "at");
    }
}
