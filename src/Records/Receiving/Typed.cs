using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;

namespace Witnessmark.Records.Receiving;

/// <summary>Values as they were typed.</summary>
internal static class Typed
{
    public static bool IsEmpty(DataNode? node) => node switch
    {
        null => true,
        DataText text => string.IsNullOrWhiteSpace(text.Text),
        DataList list => list.Items.All(IsEmpty),
        DataMap map => map.Entries.All(e => IsEmpty(e.Value)),
        _ => false,
    };

    /// <summary>Null when empty or no text.</summary>
    public static Located<string>? Text(DataNode? node) =>
        node is DataText text && !IsEmpty(text) ? new Located<string>(text.Text.Trim(), text.At) : null;

    public static bool IsEmpty(Located<string>? text) => string.IsNullOrWhiteSpace(text?.Value);

    public static int? Count(DataNode node) =>
        Text(node) is { } text && int.TryParse(text.Value, NumberStyles.None, CultureInfo.InvariantCulture, out var n) ? n : null;

    public static DateTimeOffset? Time(string text) =>
        DateTimeOffset.TryParseExact(
            text, ["yyyy-MM-dd'T'HH:mmzzz", "yyyy-MM-dd'T'HH:mm:sszzz", "yyyy-MM-dd'T'HH:mm'Z'", "yyyy-MM-dd'T'HH:mm:ss'Z'"],
            CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var time)
            ? time : null;
}

/// <summary>One row of readings: <c>5.02 5.01 5.02 mm</c>.</summary>
/// <param name="Piece">D1; empty when the reading is of no part.</param>
/// <param name="Numbers">As written, with their digits; empty when <paramref name="Unclear"/>.</param>
/// <param name="UnitText">What stands behind the numbers.</param>
/// <param name="Unit">Null when it is not known.</param>
/// <param name="Unclear">The piece of text that is no number.</param>
internal sealed partial record TypedRow(string Piece, ImmutableArray<decimal> Numbers, string UnitText, Unit? Unit, string? Unclear, Location At)
{
    /// <summary>More than any row of boxes on a sheet holds.</summary>
    private const int LongestRow = 1000;

    public static TypedRow Of(string piece, DataNode node)
    {
        var text = string.Join(' ', Texts(node));
        if (text.Length > LongestRow)
            return new TypedRow(piece, [], "", null, $"{text[..20]}…", node.At);
        var numbers = ImmutableArray.CreateBuilder<decimal>();
        var rest = text.Trim();
        while (NumberAhead().Match(rest) is { Success: true } match)
        {
            if (!decimal.TryParse(match.Groups[1].Value, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number))
                return new TypedRow(piece, [], "", null, match.Groups[1].Value, node.At);
            numbers.Add(number);
            rest = rest[match.Length..].TrimStart();
        }
        var unclear = rest.Any(char.IsDigit) && UnitTable.Find(rest) is null ? rest : numbers.Count == 0 ? text : null;
        return new TypedRow(piece, unclear is null ? numbers.ToImmutable() : [], rest, UnitTable.Find(rest), unclear, node.At);
    }

    public IEnumerable<Quantity> In(Unit unit) => Numbers.Select(n => new Quantity(n, unit));

    private static IEnumerable<string> Texts(DataNode node) => node switch
    {
        DataText text => [text.Text],
        DataList list => list.Items.SelectMany(Texts),
        _ => [],
    };

    // not followed by a comma or more digits: 5,02 is no 5; and no longer than any gauge shows
    [GeneratedRegex(@"^([-−]?[0-9]{1,9}(?:\.[0-9]{1,9})?)(?![0-9.,])")]
    private static partial Regex NumberAhead();
}
