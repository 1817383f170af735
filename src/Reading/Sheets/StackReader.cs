using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Reading.Data;
using Witnessmark.Reading.Facts;
using Witnessmark.Reading.Faults;
using Witnessmark.Reading.Shapes;

namespace Witnessmark.Reading.Sheets;

/// <summary>Parts stacked in an order, one line a row: <c>8 x steel-plate, friction-disc</c>.</summary>
internal static partial class StackReader
{
    private const int MostTimes = 200;
    private const string Facing = "faced side to ";
    private const string Like = "Write parts in building order, one line a row: `end-plate, faced side to piston` or `8 x steel-plate, friction-disc`.";

    private const string TimesPattern = "^(?<n>[0-9]+) *[x×] +";
    private const string Piece = $@"{Spelling.Name}(?:\s*,\s*{Facing}\s*[^,\s][^,]*)?";

    private static readonly SpelledForm RowForm = new(
        "row of a stack",
        () => $@"^(?:{WholeNumbers.Pattern(1, MostTimes)} *[x×] +)?\s*{Piece}(?:\s*,\s*{Piece})*\s*$");

    private static readonly Shape Shape = new(
        "stack",
        "a stack",
        Row.Toleranced("cavity", "86.2 ± 0.15 mm", "depth of the room that it is built in", "length"),
        Row.Name("from", "piston", "what it is built from"),
        Row.Name("to", "ring", "what closes it"),
        Row.Lines("order", "[\"8 x steel-plate, friction-disc\", end-plate]", "parts in building order, one line a row", RowForm).Must,
        Row.Range("clearance", "2.8 to 3.6 mm", "play that is left when it is closed", "length"),
        Row.Quantity("seal-overrun", "8.6 mm", "travel at which the piston leaves its seal bore", "length"),
        Row.Quantity("margin", "0.5 mm", "what of that travel must be left", "length").OrZero,
        Row.Basis);

    public static readonly Row Section = Row.Each("stacks", Shape, "{cavity: 86.2 ± 0.15 mm, from: piston, order: [friction-disc]}", "parts that are built in an order");

    public static Items<PartStack> Stacks(Fields sheet) => new(sheet.Each(Section.Key, One));

    private static PartStack One(Located<string> id, Fields stack) => new(id, stack.Map)
    {
        Cavity = stack.Toleranced("cavity"),
        From = stack.Text("from"),
        To = stack.Text("to"),
        Order = [.. stack.List("order").Select(line => Line(line, stack)).OfType<StackRow>()],
        Clearance = stack.Range("clearance"),
        SealOverrun = stack.Quantity("seal-overrun"),
        Margin = stack.Quantity("margin"),
        Basis = stack.Text("basis"),
    };

    private static StackRow? Line(Located<string> line, Fields stack)
    {
        var times = Times().Match(line.Value);
        if (Turns(times) is not { } turns)
            return Refuse(line, stack, $"is built 0 times or more than {Say.Number(MostTimes)} times");
        var pieces = ImmutableArray.CreateBuilder<StackPiece>();
        foreach (var text in line.Piece(times.Length, line.Value.Length).AtCommas())
        {
            if (text.Value.StartsWith(Facing, StringComparison.Ordinal) && pieces.Count > 0 && pieces[^1].FacedTo is null)
                pieces[^1] = pieces[^1] with { FacedTo = text.Piece(Facing.Length, text.Value.Length).Trimmed() };
            else if (Spelling.OneName.IsMatch(text.Value))
                pieces.Add(new StackPiece(text, null));
            else
                return Refuse(text.Value.Length == 0 ? line : text, stack, text.Value.Length == 0 ? "has a comma with nothing beside it" : "is not a part");
        }
        return new StackRow(turns, pieces.ToImmutable(), line.At);
    }

    private static int? Turns(Match times) =>
        !times.Success ? 1
        : int.TryParse(times.Groups["n"].Value, NumberStyles.None, CultureInfo.InvariantCulture, out var n) && n is >= 1 and <= MostTimes ? n
        : null;

    private static StackRow? Refuse(Located<string> text, Fields stack, string found)
    {
        stack.Findings.Add(
            DataFaults.OrderUnclear,
            text.At,
            $"`{Say.Short(text.Value)}` in `order` of {stack.What} {found}.",
            "The ladder on the sheet and the count of parts come from these lines.",
            Like);
        return null;
    }

    [GeneratedRegex(TimesPattern)]
    private static partial Regex Times();
}
