using UnitsNet;
using UnitsNet.Units;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Language.Tests;

/// <summary>The table against UnitsNet 5.75.1, unit by unit, to a relative 1e-12.</summary>
public sealed class UnitsNetTests
{
    private const double Tolerance = 1e-12;

    /// <summary>What UnitsNet 5.75.1 does not have.</summary>
    private static readonly string[] Lacking = ["ozf·in", "MPa/°C", "psi/°F", "cycles", "strokes"];

    /// <summary>What UnitsNet 5.75.1 has with fewer digits: it is off by the share given, and no more.</summary>
    private static readonly Dictionary<string, double> Coarser = new()
    {
        ["inHg"] = 1e-8,
        ["US fl oz"] = 2e-12,
        ["lbf/in"] = 2e-9,
        ["hp"] = 2e-5,
        ["yd³"] = 3e-11,
    };

    private static readonly Dictionary<string, (Enum Unit, Enum Si)> Theirs = new()
    {
        ["N·m"] = (TorqueUnit.NewtonMeter, TorqueUnit.NewtonMeter),
        ["kgf·m"] = (TorqueUnit.KilogramForceMeter, TorqueUnit.NewtonMeter),
        ["kgf·cm"] = (TorqueUnit.KilogramForceCentimeter, TorqueUnit.NewtonMeter),
        ["lbf·ft"] = (TorqueUnit.PoundForceFoot, TorqueUnit.NewtonMeter),
        ["lbf·in"] = (TorqueUnit.PoundForceInch, TorqueUnit.NewtonMeter),
        ["mm"] = (LengthUnit.Millimeter, LengthUnit.Meter),
        ["cm"] = (LengthUnit.Centimeter, LengthUnit.Meter),
        ["m"] = (LengthUnit.Meter, LengthUnit.Meter),
        ["km"] = (LengthUnit.Kilometer, LengthUnit.Meter),
        ["µm"] = (LengthUnit.Micrometer, LengthUnit.Meter),
        ["in"] = (LengthUnit.Inch, LengthUnit.Meter),
        ["ft"] = (LengthUnit.Foot, LengthUnit.Meter),
        ["mil"] = (LengthUnit.Mil, LengthUnit.Meter),
        ["mi"] = (LengthUnit.Mile, LengthUnit.Meter),
        ["mm²"] = (AreaUnit.SquareMillimeter, AreaUnit.SquareMeter),
        ["m²"] = (AreaUnit.SquareMeter, AreaUnit.SquareMeter),
        ["in²"] = (AreaUnit.SquareInch, AreaUnit.SquareMeter),
        ["ft²"] = (AreaUnit.SquareFoot, AreaUnit.SquareMeter),
        ["MPa"] = (PressureUnit.Megapascal, PressureUnit.Pascal),
        ["kPa"] = (PressureUnit.Kilopascal, PressureUnit.Pascal),
        ["Pa"] = (PressureUnit.Pascal, PressureUnit.Pascal),
        ["bar"] = (PressureUnit.Bar, PressureUnit.Pascal),
        ["atm"] = (PressureUnit.Atmosphere, PressureUnit.Pascal),
        ["kgf/cm²"] = (PressureUnit.KilogramForcePerSquareCentimeter, PressureUnit.Pascal),
        ["psi"] = (PressureUnit.PoundForcePerSquareInch, PressureUnit.Pascal),
        ["ksi"] = (PressureUnit.KilopoundForcePerSquareInch, PressureUnit.Pascal),
        ["inHg"] = (PressureUnit.InchOfMercury, PressureUnit.Pascal),
        ["N"] = (ForceUnit.Newton, ForceUnit.Newton),
        ["kN"] = (ForceUnit.Kilonewton, ForceUnit.Newton),
        ["kgf"] = (ForceUnit.KilogramForce, ForceUnit.Newton),
        ["lbf"] = (ForceUnit.PoundForce, ForceUnit.Newton),
        ["kg"] = (MassUnit.Kilogram, MassUnit.Kilogram),
        ["g"] = (MassUnit.Gram, MassUnit.Kilogram),
        ["t"] = (MassUnit.Tonne, MassUnit.Kilogram),
        ["lb"] = (MassUnit.Pound, MassUnit.Kilogram),
        ["oz"] = (MassUnit.Ounce, MassUnit.Kilogram),
        ["short ton"] = (MassUnit.ShortTon, MassUnit.Kilogram),
        ["long ton"] = (MassUnit.LongTon, MassUnit.Kilogram),
        ["L"] = (VolumeUnit.Liter, VolumeUnit.CubicMeter),
        ["mL"] = (VolumeUnit.Milliliter, VolumeUnit.CubicMeter),
        ["cm³"] = (VolumeUnit.CubicCentimeter, VolumeUnit.CubicMeter),
        ["m³"] = (VolumeUnit.CubicMeter, VolumeUnit.CubicMeter),
        ["US gal"] = (VolumeUnit.UsGallon, VolumeUnit.CubicMeter),
        ["US qt"] = (VolumeUnit.UsQuart, VolumeUnit.CubicMeter),
        ["US pt"] = (VolumeUnit.UsPint, VolumeUnit.CubicMeter),
        ["US fl oz"] = (VolumeUnit.UsOunce, VolumeUnit.CubicMeter),
        ["Imp gal"] = (VolumeUnit.ImperialGallon, VolumeUnit.CubicMeter),
        ["in³"] = (VolumeUnit.CubicInch, VolumeUnit.CubicMeter),
        ["ft³"] = (VolumeUnit.CubicFoot, VolumeUnit.CubicMeter),
        ["yd³"] = (VolumeUnit.CubicYard, VolumeUnit.CubicMeter),
        ["L/min"] = (VolumeFlowUnit.LiterPerMinute, VolumeFlowUnit.CubicMeterPerSecond),
        ["US gal/min"] = (VolumeFlowUnit.UsGallonPerMinute, VolumeFlowUnit.CubicMeterPerSecond),
        ["°C"] = (TemperatureUnit.DegreeCelsius, TemperatureUnit.Kelvin),
        ["°F"] = (TemperatureUnit.DegreeFahrenheit, TemperatureUnit.Kelvin),
        ["km/h"] = (SpeedUnit.KilometerPerHour, SpeedUnit.MeterPerSecond),
        ["m/s"] = (SpeedUnit.MeterPerSecond, SpeedUnit.MeterPerSecond),
        ["mph"] = (SpeedUnit.MilePerHour, SpeedUnit.MeterPerSecond),
        ["ft/s"] = (SpeedUnit.FootPerSecond, SpeedUnit.MeterPerSecond),
        ["J"] = (EnergyUnit.Joule, EnergyUnit.Joule),
        ["kW"] = (PowerUnit.Kilowatt, PowerUnit.Watt),
        ["hp"] = (PowerUnit.MechanicalHorsepower, PowerUnit.Watt),
        ["cSt"] = (KinematicViscosityUnit.Centistokes, KinematicViscosityUnit.SquareMeterPerSecond),
        ["N/mm"] = (ForcePerLengthUnit.NewtonPerMillimeter, ForcePerLengthUnit.NewtonPerMeter),
        ["lbf/in"] = (ForcePerLengthUnit.PoundForcePerInch, ForcePerLengthUnit.NewtonPerMeter),
        ["deg"] = (AngleUnit.Degree, AngleUnit.Radian),
        ["h"] = (DurationUnit.Hour, DurationUnit.Second),
        ["min"] = (DurationUnit.Minute, DurationUnit.Second),
        ["s"] = (DurationUnit.Second, DurationUnit.Second),
        ["rpm"] = (RotationalSpeedUnit.RevolutionPerMinute, RotationalSpeedUnit.RevolutionPerSecond),
        ["%"] = (RatioUnit.Percent, RatioUnit.DecimalFraction),
        ["turns"] = (AngleUnit.Revolution, AngleUnit.Revolution),
    };

    public static TheoryData<string> Compared => [.. Theirs.Keys];

    [Theory]
    [MemberData(nameof(Compared))]
    public void A_unit_is_worth_what_it_is_worth_elsewhere(string symbol)
    {
        var (unit, si) = Theirs[symbol];
        var off = new[] { 1m, 37.5m, 455m, 12405m }.Max(number =>
        {
            var theirs = UnitConverter.Convert((double)number, unit, si);
            return Math.Abs(Witnessmark.Language.Quantities.Quantity.Of(number, symbol).Si - theirs) / Math.Abs(theirs);
        });

        if (Coarser.TryGetValue(symbol, out var share))
            Assert.InRange(off, Tolerance, share);
        else
            Assert.InRange(off, 0, Tolerance);
    }

    [Fact]
    public void Every_unit_is_compared_or_named_as_lacking() =>
        Assert.Equal(
            UnitTable.All.Select(u => u.Symbol).Order(StringComparer.Ordinal),
            Theirs.Keys.Concat(Lacking).Order(StringComparer.Ordinal));

    [Fact]
    public void What_is_named_as_lacking_is_still_lacking()
    {
        string[] names = ["OunceForceInch", "MegapascalPerDegreeCelsius", "MegapascalPerKelvin", "Cycle", "Stroke"];
        var had = UnitsNet.Quantity.Infos.SelectMany(i => i.UnitInfos).Where(u => names.Contains(u.Name) || names.Contains(u.PluralName)).Select(u => u.Name);

        Assert.Empty(had);
    }
}
