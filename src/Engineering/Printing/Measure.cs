using System.Globalization;

namespace Witnessmark.Engineering.Printing;

/// <summary>A length on paper under the name that the style sheet knows it by: <c>--box-height:11.6mm</c>.</summary>
/// <param name="Value">In millimetres, or in points for type.</param>
public sealed record Measure(string Name, double Value, bool IsType)
{
    public const double MillimetresPerPoint = 25.4 / 72;

    public double Millimetres => IsType ? Value * MillimetresPerPoint : Value;

    public string Css => string.Create(CultureInfo.InvariantCulture, $"--{Name}:{Value:0.###}{(IsType ? "pt" : "mm")};");
}
