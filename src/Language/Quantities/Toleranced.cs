namespace Witnessmark.Language.Quantities;

/// <summary>A target and what it may be off: <c>455 ± 25 N·m</c>, <c>455 N·m ± 5 %</c>.</summary>
/// <param name="Tolerance">In the target's unit, not negative; null when none was written.</param>
/// <param name="Beside">The same target written in a second unit by the author, <c>(336 lbf·ft)</c>, or null.</param>
public readonly record struct Toleranced(Quantity Target, Quantity? Tolerance, Quantity? Beside = null)
{
    public Quantity Low => Target with { Number = Target.Number - (Tolerance?.Number ?? 0) };

    public Quantity High => Target with { Number = Target.Number + (Tolerance?.Number ?? 0) };

    public override string ToString() =>
        Tolerance is { } t ? $"{Target.NumberText} ± {t.NumberText} {Target.Unit.Symbol}" : Target.ToString();
}
