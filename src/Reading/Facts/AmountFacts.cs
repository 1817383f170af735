using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Reading.Facts;

/// <summary>remove fit loosen snug tighten place recover count</summary>
internal static class AmountFacts
{
    /// <summary>More of one thing than any machine has.</summary>
    private const int Most = 9999;

    public static FactValue? Handled(FactText fact) => Read(fact, Spelling.Amount);

    public static FactValue? Counted(FactText fact) => Read(fact, Spelling.Counted);

    private static FactValue? Read(FactText fact, Regex shape)
    {
        var amounts = ImmutableArray.CreateBuilder<Amount>();
        foreach (var piece in fact.Text.AtCommas())
        {
            var match = shape.Match(piece.Value);
            if (!match.Success)
                return fact.Unclear(piece);
            if (TooMany(match.Groups["n"]) || TooMany(match.Groups["of"]))
                return fact.Unclear(piece, $"`{piece.Value}` is a number that no machine has.", $"Up to {Most} can be counted.");
            amounts.Add(Of(piece, match));
        }
        return new Amounts(amounts.ToImmutable());
    }

    private static Amount Of(Located<string> piece, Match match) => new(
        piece.Piece(match.Groups["thing"]),
        Number(piece, match.Groups["n"]),
        Number(piece, match.Groups["of"]),
        piece.PieceOrNull(match.Groups["place"]),
        match.Groups["least"].Success,
        match.Groups["all"].Success,
        piece.At);

    private static bool TooMany(Group digits) => digits.Success && (digits.Length > 4 || int.Parse(digits.ValueSpan, CultureInfo.InvariantCulture) > Most);

    private static Located<int>? Number(Located<string> piece, Group digits) =>
        digits.Success ? piece.Piece(digits).As(int.Parse(digits.ValueSpan, CultureInfo.InvariantCulture)) : null;
}
