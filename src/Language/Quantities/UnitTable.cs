using System.Collections.Frozen;
using System.Collections.Immutable;

namespace Witnessmark.Language.Quantities;

/// <summary>
/// The closed table of units. Factors are exact: built from the inch (25.4 mm, 1959), the pound (0.45359237 kg, 1959) and
/// standard gravity (9.80665 m/s², 3rd CGPM 1901). A unit that is not here is not read; adding one is adding a line.
/// </summary>
public static class UnitTable
{
    private const decimal Inch = 0.0254m;
    private const decimal Foot = 12 * Inch;
    private const decimal Pound = 0.45359237m;
    private const decimal Gravity = 9.80665m;
    private const decimal PoundForce = Pound * Gravity;
    private const decimal UsGallon = 231 * Inch * Inch * Inch;
    private const decimal Degree = 0.0174532925199432957692369077m;

    private static readonly Dimension Length = new(1, 0, 0, 0, 0, 0);
    private static readonly Dimension Area = Length * Length;
    private static readonly Dimension Volume = Area * Length;
    private static readonly Dimension Mass = new(0, 1, 0, 0, 0, 0);
    private static readonly Dimension Time = new(0, 0, 1, 0, 0, 0);
    private static readonly Dimension Temperature = new(0, 0, 0, 1, 0, 0);
    private static readonly Dimension Angle = new(0, 0, 0, 0, 1, 0);
    private static readonly Dimension Count = new(0, 0, 0, 0, 0, 1);
    private static readonly Dimension Force = Mass * Length / (Time * Time);
    private static readonly Dimension Energy = Force * Length;
    private static readonly Dimension Torque = Energy / Angle;
    private static readonly Dimension Pressure = Force / Area;

    /// <summary>All units, by kind. The first of a kind and system is the one its kind is usually written in.</summary>
    public static readonly ImmutableArray<Unit> All =
    [
        Metric("N·m", "torque", Torque, 1m, "lbf·ft", "Nm", "N.m", "N*m", "N-m", "N m", "newton metre", "newton metres"),
        Metric("kgf·m", "torque", Torque, Gravity, "lbf·ft", "kgm", "kgf.m", "kgf*m", "kgf-m", "kg·m", "mkg"),
        Metric("kgf·cm", "torque", Torque, Gravity / 100, "lbf·in", "kgf.cm", "kgf*cm", "kg·cm", "kgcm"),
        Us("lbf·ft", "torque", Torque, PoundForce * Foot, "N·m", "ft-lb", "ft·lb", "ft.lb", "ft lb", "ft-lbs", "lb-ft", "lb·ft", "lb ft", "lbft", "ftlb",
            "lbf.ft", "lbf*ft", "lbf-ft", "lbf ft", "ft-lbf", "ft·lbf", "foot-pounds", "pound-feet"),
        Us("lbf·in", "torque", Torque, PoundForce * Inch, "N·m", "in-lb", "in·lb", "in.lb", "in lb", "in-lbs", "lb-in", "lb·in", "lb in", "lbin", "inlb",
            "lbf.in", "lbf*in", "lbf-in", "lbf in", "in-lbf", "in·lbf", "inch-pounds"),
        Us("ozf·in", "torque", Torque, PoundForce * Inch / 16, "N·m", "oz-in", "ozf.in", "ozf*in", "in-oz"),

        Metric("mm", "length", Length, 0.001m, "in", "millimetre", "millimetres", "millimeter", "millimeters"),
        Metric("cm", "length", Length, 0.01m, "in", "centimetre", "centimetres"),
        Metric("m", "length", Length, 1m, "ft", "metre", "metres", "meter", "meters"),
        Metric("km", "length", Length, 1000m, "mi", "kilometre", "kilometres"),
        Metric("µm", "length", Length, 0.000001m, "mil", "um", "micron", "microns"),
        Us("in", "length", Length, Inch, "mm", "inch", "inches", "\"", "″"),
        Us("ft", "length", Length, Foot, "m", "foot", "feet", "'", "′"),
        Us("mil", "length", Length, Inch / 1000, "µm", "thou", "mils"),
        Us("mi", "length", Length, 5280 * Foot, "km", "mile", "miles"),

        Metric("mm²", "area", Area, 0.000001m, "in²", "mm2", "mm^2"),
        Metric("m²", "area", Area, 1m, "ft²", "m2", "m^2"),
        Us("in²", "area", Area, Inch * Inch, "mm²", "in2", "in^2", "sq in"),
        Us("ft²", "area", Area, Foot * Foot, "m²", "ft2", "ft^2", "sq ft"),

        Metric("MPa", "pressure", Pressure, 1_000_000m, "psi", "N/mm²", "N/mm2", "N/mm^2"),
        Metric("kPa", "pressure", Pressure, 1000m, "psi"),
        Metric("Pa", "pressure", Pressure, 1m, "psi"),
        Metric("bar", "pressure", Pressure, 100_000m, "psi"),
        Metric("kgf/cm²", "pressure", Pressure, Gravity * 10_000, "psi", "kgf/cm2", "kgf/cm^2"),
        Metric("atm", "pressure", Pressure, 101_325m, "psi"),
        Us("psi", "pressure", Pressure, PoundForce / (Inch * Inch), "MPa", "lbf/in²", "lbf/in2", "PSI"),
        Us("ksi", "pressure", Pressure, 1000 * PoundForce / (Inch * Inch), "MPa"),
        Us("inHg", "pressure", Pressure, 3386.388640341m, "kPa"),

        Metric("N", "force", Force, 1m, "lbf", "newton", "newtons"),
        Metric("kN", "force", Force, 1000m, "lbf"),
        Metric("kgf", "force", Force, Gravity, "lbf"),
        Us("lbf", "force", Force, PoundForce, "N"),

        Metric("kg", "mass", Mass, 1m, "lb", "kilogram", "kilograms"),
        Metric("g", "mass", Mass, 0.001m, "oz", "gram", "grams"),
        Metric("t", "mass", Mass, 1000m, "lb", "tonne", "tonnes"),
        Us("lb", "mass", Mass, Pound, "kg", "lbs", "pound", "pounds", "lbm"),
        Us("oz", "mass", Mass, Pound / 16, "g"),
        Us("short ton", "mass", Mass, 2000 * Pound, "kg", "short tons"),
        Us("long ton", "mass", Mass, 2240 * Pound, "kg", "long tons"),

        Metric("L", "volume", Volume, 0.001m, "US gal", "l", "litre", "litres", "liter", "liters"),
        Metric("mL", "volume", Volume, 0.000001m, "US fl oz", "ml", "millilitre", "millilitres"),
        Metric("cm³", "volume", Volume, 0.000001m, "in³", "cm3", "cm^3", "cc"),
        Metric("m³", "volume", Volume, 1m, "US gal", "m3", "m^3"),
        Us("US gal", "volume", Volume, UsGallon, "L", "gal", "gallon", "gallons", "US gallon", "US gallons"),
        Us("US qt", "volume", Volume, UsGallon / 4, "L", "qt", "quart", "quarts", "US liquid quart"),
        Us("US pt", "volume", Volume, UsGallon / 8, "L", "pt", "pint", "pints", "US liquid pint"),
        Us("US fl oz", "volume", Volume, UsGallon / 128, "mL", "fl oz", "US fluid ounce"),
        Us("Imp gal", "volume", Volume, 0.00454609m, "L", "Imperial gallon", "imp gal"),
        Us("in³", "volume", Volume, Inch * Inch * Inch, "cm³", "in3", "in^3", "cu in"),
        Us("ft³", "volume", Volume, Foot * Foot * Foot, "m³", "ft3", "ft^3", "cu ft"),
        Us("yd³", "volume", Volume, 27 * Foot * Foot * Foot, "m³", "yd3", "yd^3", "cu yd"),

        Metric("L/min", "flow", Volume / Time, 0.001m / 60, "US gal/min", "l/min", "lpm"),
        Us("US gal/min", "flow", Volume / Time, UsGallon / 60, "L/min", "gpm", "gal/min"),

        new("°C", "temperature", Temperature, 1m, 273.15m, UnitSystem.Metric, ["degC", "deg C", "C"], "°F"),
        new("°F", "temperature", Temperature, 5m / 9m, 273.15m - (32m * 5m / 9m), UnitSystem.UsCustomary, ["degF", "deg F", "F"], "°C"),

        Metric("km/h", "speed", Length / Time, 1000m / 3600, "mph", "kph", "kmh"),
        Metric("m/s", "speed", Length / Time, 1m, "ft/s"),
        Us("mph", "speed", Length / Time, 5280 * Foot / 3600, "km/h", "mi/h", "mile/h"),
        Us("ft/s", "speed", Length / Time, Foot, "m/s", "fps"),

        Metric("J", "energy", Energy, 1m, null, "joule", "joules"),
        Metric("kW", "power", Energy / Time, 1000m, "hp"),
        Us("hp", "power", Energy / Time, 550 * Foot * PoundForce, "kW", "horsepower"),
        Metric("cSt", "viscosity", Area / Time, 0.000001m, null, "mm²/s", "mm2/s", "mm^2/s"),
        Metric("N/mm", "stiffness", Force / Length, 1000m, "lbf/in"),
        Us("lbf/in", "stiffness", Force / Length, PoundForce / Inch, "N/mm"),
        Metric("MPa/°C", "pressure per degree", Pressure / Temperature, 1_000_000m, null, "MPa/degC"),
        Us("psi/°F", "pressure per degree", Pressure / Temperature, PoundForce / (Inch * Inch) * 9 / 5, null, "psi/degF"),

        Both("deg", "angle", Angle, Degree, "°", "degree", "degrees"),
        Both("h", "time", Time, 3600m, "hour", "hours", "hr", "hrs"),
        Both("min", "time", Time, 60m, "minute", "minutes", "mins"),
        Both("s", "time", Time, 1m, "sec", "second", "seconds"),
        Both("rpm", "rotation", Count / Time, 1m / 60, "1/min", "min⁻¹", "r/min"),
        Both("%", "share", Dimension.None, 0.01m, "percent", "per cent"),
        Both("turns", "turns", Count, 1m, "turn"),
        Both("cycles", "cycles", Count, 1m, "cycle"),
        Both("strokes", "strokes", Count, 1m, "stroke"),
    ];

    private static readonly FrozenDictionary<string, Unit> BySpelling = All
        .SelectMany(u => u.Spellings.Prepend(u.Symbol).Select(s => (Spelling: s, Unit: u)))
        .ToFrozenDictionary(p => p.Spelling, p => p.Unit, StringComparer.Ordinal);

    private static readonly FrozenDictionary<string, Unit>.AlternateLookup<ReadOnlySpan<char>> ByCharacters = BySpelling.GetAlternateLookup<ReadOnlySpan<char>>();

    private const string HaveLookAlikes = "\u00B7-\u00B5°";

    private static readonly int Longest = BySpelling.Keys.Max(s => s.Length);

    /// <summary>The unit that a spelling stands for, or null. Dots, dashes, micro signs and blanks that look alike are one.</summary>
    public static Unit? Find(ReadOnlySpan<char> spelling)
    {
        if (ByCharacters.TryGetValue(spelling, out var unit))
            return unit;
        Span<char> folded = stackalloc char[Longest + 1];
        return Fold(spelling, folded) is { } length && ByCharacters.TryGetValue(folded[..length], out unit) ? unit : null;
    }

    /// <summary>A unit that is known to be in the table.</summary>
    public static Unit Get(string symbol) => Find(symbol) ?? throw new ArgumentException($"no unit {symbol}", nameof(symbol));

    public static Unit? BesideOf(Unit unit) => unit.Beside is null ? null : Find(unit.Beside);

    public static IEnumerable<string> Spellings => BySpelling.Keys;

    /// <summary>What a word may stand for that means several units, or null. It is never read as one of them.</summary>
    public static string? Choices(string written) => written is "ton" or "tons" ? "t, short ton or long ton" : null;

    /// <summary>Signs that are read as this one.</summary>
    internal static string LookAlikes(char sign) => sign switch
    {
        '\u00B7' => "\u22C5\u2219\u2022\u0387",
        '-' => "\u2010\u2011\u2012\u2013\u2212",
        '\u00B5' => "\u03BC",
        '°' => "\u00BA\u02DA",
        _ => "",
    };

    /// <returns>How long the folded spelling is; null when it is longer than any.</returns>
    private static int? Fold(ReadOnlySpan<char> spelling, Span<char> folded)
    {
        var length = 0;
        foreach (var written in spelling)
        {
            var c = Plain(written);
            if (c == ' ' && (length == 0 || folded[length - 1] == ' '))
                continue;
            if (length == folded.Length)
                return null;
            folded[length++] = c;
        }
        return length > 0 && folded[length - 1] == ' ' ? length - 1 : length;
    }

    private static char Plain(char c)
    {
        foreach (var sign in HaveLookAlikes)
            if (LookAlikes(sign).Contains(c))
                return sign;
        return char.IsWhiteSpace(c) ? ' ' : c;
    }

    private static Unit Metric(string symbol, string kind, Dimension dimension, decimal factor, string? beside, params ImmutableArray<string> spellings) =>
        new(symbol, kind, dimension, factor, 0, UnitSystem.Metric, spellings, beside);

    private static Unit Us(string symbol, string kind, Dimension dimension, decimal factor, string? beside, params ImmutableArray<string> spellings) =>
        new(symbol, kind, dimension, factor, 0, UnitSystem.UsCustomary, spellings, beside);

    private static Unit Both(string symbol, string kind, Dimension dimension, decimal factor, params ImmutableArray<string> spellings) =>
        new(symbol, kind, dimension, factor, 0, UnitSystem.Both, spellings, null);
}
