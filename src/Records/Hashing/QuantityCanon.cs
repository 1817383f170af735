using Witnessmark.Language.Quantities;

namespace Witnessmark.Records.Hashing;

/// <summary>Quantities in standard spelling with the digits that were written: 4.60 mm is not 4.6 mm, but Nm is N·m.</summary>
internal static class QuantityCanon
{
    public static Canon Of(Quantity quantity) => Canon.Text(quantity.ToString());

    public static Canon Of(QuantityRange range) => Canon.Map(("low", Of(range.Low)), ("high", Of(range.High)));

    public static Canon Of(Toleranced value) => Canon.Map(
        ("target", Of(value.Target)),
        ("off", value.Tolerance is { } t ? Of(t) : null),
        ("beside", value.Beside is { } b ? Of(b) : null));

    private static Canon? Of(Bound? bound) => bound is { } b ? Canon.Text((b.Inclusive ? "" : "not ") + b.Value) : null;
}
