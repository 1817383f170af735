using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;

namespace Witnessmark.Checking.Wording;

/// <summary>The number inside words of a data sheet: <c>cooling relief 0.35 MPa</c>, <c>steel, yield 235 MPa</c>, <c>0.6 m square</c>.</summary>
internal static class NumberSaid
{
    /// <summary>The first number of this kind, behind <paramref name="behind"/> where that is given; null when there is none.</summary>
    public static Quantity? Number(this Located<string>? words, string kind, string behind = "")
    {
        if (words is not { Value: { } text } || text.IndexOf(behind, StringComparison.OrdinalIgnoreCase) is not (>= 0 and var from))
            return null;
        foreach (var found in QuantitiesInText.Find(text.AsSpan(from)))
            if (found.Quantity.Unit.Kind == kind)
                return found.Quantity;
        return null;
    }
}
