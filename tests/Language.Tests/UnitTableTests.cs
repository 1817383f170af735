using Witnessmark.Language.Quantities;

namespace Witnessmark.Language.Tests;

public sealed class UnitTableTests
{
    public static TheoryData<string> Symbols => [.. UnitTable.All.Select(u => u.Symbol)];

    [Fact]
    public void No_spelling_stands_for_two_units()
    {
        var spellings = UnitTable.All.SelectMany(u => u.Spellings.Prepend(u.Symbol)).ToList();

        Assert.Equal(spellings.Distinct(StringComparer.Ordinal), spellings);
    }

    [Theory]
    [MemberData(nameof(Symbols))]
    public void Every_spelling_is_found_and_tidied_to_the_printed_one(string symbol)
    {
        foreach (var spelling in UnitTable.Get(symbol).Spellings)
            Assert.Equal(symbol, UnitTable.Find(spelling)?.Symbol);
    }

    [Theory]
    [MemberData(nameof(Symbols))]
    public void The_unit_beside_is_of_the_same_kind_and_of_the_other_system(string symbol)
    {
        var unit = UnitTable.Get(symbol);
        if (unit.Beside is null)
            return;
        var beside = UnitTable.BesideOf(unit);

        Assert.NotNull(beside);
        Assert.Equal(unit.Kind, beside.Kind);
        Assert.NotEqual(unit.System, beside.System);
        Assert.NotEqual(UnitSystem.Both, beside.System);
    }

    [Fact]
    public void Units_of_a_kind_have_one_dimension()
    {
        foreach (var kind in UnitTable.All.GroupBy(u => u.Kind))
            Assert.Single(kind.Select(u => u.Dimension).Distinct());
    }

    [Fact]
    public void Torque_never_passes_for_energy()
    {
        var torque = UnitTable.Get("N·m");
        var energy = UnitTable.Get("J");

        Assert.False(torque.SameKindAs(energy));
        Assert.NotEqual(torque.Dimension, energy.Dimension);
        Assert.Throws<ArgumentException>(() => Quantity.Of(455, "N·m").In(energy));
    }

    [Fact]
    public void The_same_number_in_another_torque_unit_is_another_torque()
    {
        var newtonMetres = Quantity.Of(235, "N·m");
        var poundFeet = Quantity.Of(235, "lbf·ft");

        Assert.NotEqual(newtonMetres, poundFeet);
        Assert.True(newtonMetres.CompareTo(poundFeet) < 0);
        Assert.False(DualUnits.Agree(newtonMetres, poundFeet, 0.02m));
    }

    [Theory]
    [InlineData("N⋅m", "N·m")]
    [InlineData("N•m", "N·m")]
    [InlineData("ft–lb", "lbf·ft")]
    [InlineData("μm", "µm")]
    [InlineData("ºC", "°C")]
    [InlineData("US\u00A0gal", "US gal")]
    [InlineData("US  gal", "US gal")]
    public void Signs_that_look_alike_are_one(string written, string symbol) => Assert.Equal(symbol, UnitTable.Find(written)?.Symbol);

    [Theory]
    [InlineData("ton")]
    [InlineData("tons")]
    public void A_ton_may_be_three_things_and_is_read_as_none(string written)
    {
        Assert.Null(UnitTable.Find(written));
        Assert.NotNull(UnitTable.Choices(written));
    }

    [Theory]
    [InlineData("212", "°F", "100", "°C")]
    [InlineData("122", "°F", "50", "°C")]
    [InlineData("-40", "°F", "-40", "°C")]
    [InlineData("-459.67", "°F", "-273.15", "°C")]
    [InlineData("60", "rpm", "60", "rpm")]
    [InlineData("1", "mph", "1.609344", "km/h")]
    [InlineData("231", "in³", "1", "US gal")]
    [InlineData("0.5", "in", "12.7", "mm")]
    public void One_value_in_two_units_is_the_same_value(string a, string unitOfA, string b, string unitOfB) =>
        Assert.Equal(0, Quantity.Of(Number(a), unitOfA).CompareTo(Quantity.Of(Number(b), unitOfB)));

    [Theory]
    [InlineData("235", -1, "240 mm")]
    [InlineData("-235", -1, "-240 mm")]
    [InlineData("4.6", 2, "4.60 mm")]
    [InlineData("4.605", 2, "4.61 mm")]
    [InlineData("-0.001", 2, "0.00 mm")]
    [InlineData("0", -2, "0 mm")]
    public void Rounding_gives_the_decimals_asked_for(string number, int decimals, string printed) =>
        Assert.Equal(printed, Quantity.Of(Number(number), "mm").RoundedTo(decimals).ToString());

    private static decimal Number(string text) => decimal.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
