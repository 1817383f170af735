using Witnessmark.Language.Text;

namespace Witnessmark.Language.Quantities;

/// <summary>Reads a range in words.</summary>
internal static class RangeReader
{
    public static QuantityRange Read(QuantityScanner scan)
    {
        if (scan.Word("below"))
            return new QuantityRange(null, new Bound(scan.Quantity(), Inclusive: false));
        if (scan.Word("up to"))
            return new QuantityRange(null, new Bound(scan.Quantity(), Inclusive: true));
        var above = scan.Word("above");
        var opened = above || scan.Word("from");
        var number = scan.Number();
        var unit = scan.UnitIfAny();
        if (scan.Word("to"))
            return Between(scan, number, unit, !above);
        if (unit is null)
            scan.FailWithoutUnit(number);
        if (scan.Failed)
            return default;
        var value = new Quantity(number.Value, unit!.Value.Unit);
        if (opened)
            return new QuantityRange(new Bound(value, !above), null);
        if (scan.Word("or less"))
            return new QuantityRange(null, new Bound(value, Inclusive: true));
        return scan.Word("or more")
            ? new QuantityRange(new Bound(value, Inclusive: true), null)
            : QuantityRange.Between(value, value);
    }

    private static QuantityRange Between(QuantityScanner scan, WrittenNumber low, WrittenUnit? lowUnit, bool lowInclusive)
    {
        var highInclusive = !scan.Word("below");
        var high = scan.Number();
        var highUnit = scan.UnitIfAny();
        if (highUnit is null && lowUnit is not null && scan.AtEnd)
            scan.Fail(QuantityProblem.BareNumber, high.At, scan.Replaced(TextSpan.Of(high.At.End, 0), $" {lowUnit.Value.Unit}"));
        if (highUnit is null)
            scan.FailWithoutUnit(high);
        if (scan.Failed)
            return default;
        var range = new QuantityRange(
            new Bound(new Quantity(low.Value, (lowUnit ?? highUnit)!.Value.Unit), lowInclusive),
            new Bound(new Quantity(high.Value, highUnit!.Value.Unit), highInclusive));
        // one range, one unit: who reads the first number reads the second in the same unit
        if (range.Low!.Value.Value.Unit != highUnit.Value.Unit)
            scan.Fail(QuantityProblem.KindsDiffer, highUnit.Value.At);
        else if (range.IsEmpty)
            scan.Fail(QuantityProblem.Backward, low.At.Cover(high.At), Turned(scan, low, lowUnit, high));
        return range;
    }

    /// <summary>The text with its two numbers changed over; none where an end was left out or two units were written.</summary>
    private static string? Turned(QuantityScanner scan, WrittenNumber low, WrittenUnit? lowUnit, WrittenNumber high) =>
        low.Value == high.Value || lowUnit is not null
            ? null
            : scan.Replaced(low.At.Cover(high.At), scan.Slice(high.At) + scan.Slice(new TextSpan(low.At.End, high.At.Start)) + scan.Slice(low.At));
}
