using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Reading.Data;
using Witnessmark.Reading.Facts;
using Witnessmark.Reading.Faults;

namespace Witnessmark.Reading.Sheets;

/// <summary>Parts stacked in an order, one line a row: <c>8 x steel-plate, friction-disc</c>.</summary>
internal static partial class StackReader
{
    private const int MostTimes = 200;
    private const string Facing = "faced side to ";
    private const string Like = "Write parts in building order, one line a row: `end-plate, faced side to piston` or `8 x steel-plate, friction-disc`.";

    public static Items<PartStack> Stacks(Fields sheet) => new(sheet.Each("stacks", "{cavity: 86.2 ± 0.15 mm, from: piston, order: […]}", One));

    private static PartStack One(Located<string> id, Fields stack)
    {
        var item = new PartStack(id, stack.Map)
        {
            Cavity = stack.Toleranced("cavity", "86.2 ± 0.15 mm", "length"),
            From = stack.Name("from", "piston"),
            To = stack.Name("to", "ring"),
            Order = [.. OrderLines(stack).Select(line => Row(line, stack)).OfType<StackRow>()],
            Clearance = stack.Range("clearance", "2.8 to 3.6 mm", "length"),
            SealOverrun = stack.Quantity("seal-overrun", "8.6 mm", "length"),
            Margin = stack.Quantity("margin", "0.5 mm", "length"),
            Basis = stack.Text("basis", "maker data"),
        };
        stack.Needs("order");
        return item;
    }

    /// <summary>A row has commas of its own, so one row alone may stand behind the key.</summary>
    private static ImmutableArray<Located<string>> OrderLines(Fields stack) =>
        stack.Node("order") is DataText { Text.Length: > 0 } single ? [single.Located()] : stack.List("order", "[end-plate, friction-disc]");

    private static StackRow? Row(Located<string> line, Fields stack)
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

    [GeneratedRegex(@"^(?<n>[0-9]+) *[x×] +")]
    private static partial Regex Times();
}
