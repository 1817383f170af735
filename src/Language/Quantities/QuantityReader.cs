using Witnessmark.Language.Text;

namespace Witnessmark.Language.Quantities;

/// <summary>
/// Reads quantities as they are written in a workshop. Wrong text is a fault with the smallest place it can be seen at and,
/// where there is one, what was meant; nothing is guessed and nothing throws. Digits are kept: 4.60 mm has two decimals.
/// </summary>
public static class QuantityReader
{
    /// <summary><c>455 N·m</c></summary>
    public static Parsed<Quantity> Quantity(string text)
    {
        var scan = new QuantityScanner(text);
        var quantity = scan.Quantity();
        scan.End();
        return scan.Result(quantity);
    }

    /// <summary><c>75 %</c> is 0.75.</summary>
    public static Parsed<decimal> Share(string text)
    {
        var scan = new QuantityScanner(text);
        var number = scan.Number();
        var unit = scan.Unit(number);
        if (unit is not null && unit.Value.Unit != QuantityScanner.Percent)
            scan.Fail(QuantityProblem.KindsDiffer, unit.Value.At);
        scan.End();
        return scan.Result(number.Value / 100);
    }

    /// <summary><c>455 ± 25 N·m (336 lbf·ft)</c>, <c>455 N·m ± 5 %</c>, or without a tolerance.</summary>
    public static Parsed<Toleranced> Toleranced(string text) => Toleranced(new QuantityScanner(text));

    private static Parsed<Toleranced> Toleranced(QuantityScanner scan)
    {
        var number = scan.Number();
        var unit = scan.UnitIfAny();
        var toleranced = scan.PlusMinus() ? WithTolerance(scan, number, unit) : WithoutTolerance(scan, number, unit);
        var beside = Beside(scan, toleranced);
        scan.End();
        return scan.Result(toleranced with { Beside = beside });
    }

    /// <summary>
    /// <c>2.8 to 3.6 mm</c>, <c>3.10 to below 3.15 mm</c>, <c>below x</c>, <c>above x</c>, <c>from x</c>, <c>up to x</c>,
    /// <c>x or less</c>, <c>x or more</c>, <c>0.0 MPa</c>.
    /// </summary>
    public static Parsed<QuantityRange> Range(string text) => Range(new QuantityScanner(text, ranges: true));

    private static Parsed<QuantityRange> Range(QuantityScanner scan)
    {
        var range = RangeReader.Read(scan);
        scan.End();
        return scan.Result(range);
    }

    /// <summary>A quantity or a range with its units in standard spelling, everything else as it was written; null when it is neither.</summary>
    public static string? Tidied(string text)
    {
        List<WrittenUnit> units = [];
        if (!Toleranced(new QuantityScanner(text) { Units = units }).Ok)
        {
            units.Clear();
            if (!Range(new QuantityScanner(text, ranges: true) { Units = units }).Ok)
                return null;
        }
        var tidied = text;
        foreach (var (unit, at) in units.OrderByDescending(u => u.At.Start))
            tidied = tidied[..at.Start] + (char.IsWhiteSpace(text[at.Start - 1]) ? "" : " ") + unit.Symbol + tidied[at.End..];
        return tidied;
    }

    private static Toleranced WithoutTolerance(QuantityScanner scan, WrittenNumber number, WrittenUnit? unit)
    {
        if (unit is null)
            scan.FailWithoutUnit(number);
        return scan.Failed ? default : new Toleranced(new Quantity(number.Value, unit!.Value.Unit), null);
    }

    /// <summary>The unit may stand once, behind the tolerance, or behind both.</summary>
    private static Toleranced WithTolerance(QuantityScanner scan, WrittenNumber number, WrittenUnit? own)
    {
        var off = scan.Number();
        if (off.IsNegative)
            scan.Fail(QuantityProblem.Backward, off.At, scan.Replaced(TextSpan.Of(off.At.Start, 1), ""));
        var behind = scan.UnitIfAny();
        if (behind is null)
            scan.Fail(QuantityProblem.BareNumber, off.At, own is null ? null : scan.Replaced(TextSpan.Of(off.At.End, 0), $" {own.Value.Unit}"));
        if (scan.Failed)
            return default;
        var target = new Quantity(number.Value, (own ?? behind)!.Value.Unit);
        return new Toleranced(target, Tolerance(scan, target, off.Value, behind!.Value));
    }

    /// <summary>A tolerance is a difference: it is taken into the target's unit without the offset of °C and °F.</summary>
    private static Quantity? Tolerance(QuantityScanner scan, Quantity target, decimal number, WrittenUnit written)
    {
        if (written.Unit == target.Unit)
            return target with { Number = number };
        // a share of a temperature means nothing: 0 °C is no zero
        if (written.Unit == QuantityScanner.Percent && target.Unit.Offset == 0)
            return scan.Kept(target with { Number = Math.Abs(target.Number) * number / 100 }, written.At);
        if (written.Unit.SameKindAs(target.Unit))
            return scan.Kept(DualUnits.Difference(new Quantity(number, written.Unit), target.Unit), written.At);
        scan.Fail(QuantityProblem.KindsDiffer, written.At);
        return null;
    }

    /// <summary>The same value in a second unit, in parentheses.</summary>
    private static Quantity? Beside(QuantityScanner scan, Toleranced toleranced)
    {
        if (!scan.Mark("("))
            return null;
        var open = scan.Position - 1;
        var number = scan.Number();
        var unit = scan.Unit(number);
        if (unit is not null && !unit.Value.Unit.SameKindAs(toleranced.Target.Unit))
            scan.Fail(QuantityProblem.KindsDiffer, unit.Value.At);
        if (!scan.Failed && !scan.Mark(")"))
            scan.Fail(QuantityProblem.LeftOver, scan.Rest(open));
        return unit is null ? null : new Quantity(number.Value, unit.Value.Unit);
    }
}
