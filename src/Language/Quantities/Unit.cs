using System.Collections.Immutable;

namespace Witnessmark.Language.Quantities;

public enum UnitSystem
{
    /// <summary>Used in both: seconds, degrees, percent.</summary>
    Both,
    Metric,
    UsCustomary,
}

/// <summary>
/// A unit of the closed table. <c>SI value = number × Factor + Offset</c>, in coherent SI units (m, kg, s, K, rad and what
/// follows from them: N·m, Pa, m³).
/// </summary>
/// <param name="Symbol">The spelling that is printed.</param>
/// <param name="Kind">What it measures in a mechanic's words: torque, length, pressure …</param>
/// <param name="Factor">Exact as far as a decimal of 28 digits can be.</param>
/// <param name="Spellings">Shop spellings that are read as this unit and tidied to <see cref="Symbol"/>.</param>
/// <param name="Beside">Symbol of the unit printed beside it in the other system, or null.</param>
public sealed record Unit(
    string Symbol,
    string Kind,
    Dimension Dimension,
    decimal Factor,
    decimal Offset,
    UnitSystem System,
    ImmutableArray<string> Spellings,
    string? Beside)
{
    public bool SameKindAs(Unit other) => Kind == other.Kind;

    public decimal ToSi(decimal number) => (number * Factor) + Offset;

    public decimal FromSi(decimal number) => (number - Offset) / Factor;

    public bool Equals(Unit? other) => other is not null && Symbol == other.Symbol;

    public override int GetHashCode() => Symbol.GetHashCode(StringComparison.Ordinal);

    public override string ToString() => Symbol;
}
