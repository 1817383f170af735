using System.Globalization;
using Witnessmark.Harness;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Language.Tests;

/// <summary>
/// Every row of <c>tests/Reference/conversions.csv</c>; the source stands in the row. Exact factors agree to a relative 1e-12,
/// rounded ones as far as a double holds digits, and what GNU units printed to one in the last printed digit.
/// </summary>
public sealed class ConversionTableTests
{
    private const decimal OfExact = 1e-12m;
    private const decimal OfDouble = 2.3e-16m;

    private static readonly IReadOnlyList<IReadOnlyDictionary<string, string>> Rows = Csv.Reference("conversions.csv");

    public static TheoryData<string, string> Pairs()
    {
        var pairs = new TheoryData<string, string>();
        foreach (var row in Rows.Where(r => r["note"] != "affine"))
            pairs.Add(row["from"], row["to"]);
        return pairs;
    }

    [Theory]
    [MemberData(nameof(Pairs))]
    public void A_unit_goes_over_into_another_as_published(string from, string to)
    {
        var row = Rows.Single(r => r["from"] == from && r["to"] == to);
        var ours = new Quantity(1, UnitTable.Get(Plain(from))).In(UnitTable.Get(Plain(to))).Number;

        Assert.NotEqual("", row["source"]);
        Assert.NotEqual("memory", row["verified"]);
        var factor = Number(row["factor"]);
        Near(factor, ours, row["exact"].StartsWith("yes", StringComparison.Ordinal) ? OfExact * factor : Math.Max(OfDouble * factor, LastDigit(factor)));
        var printed = Number(row["gnu_units_output"]);
        Near(printed, ours, LastDigit(printed));
    }

    [Fact]
    public void The_boiling_point_goes_over_with_its_offset()
    {
        var row = Rows.Single(r => r["note"] == "affine");
        // "units tempF(212) tempC = 100"
        Assert.Contains("tempF(212) tempC = 100", row["gnu_units_output"]);

        Assert.Equal(100, Quantity.Of(212, Plain(row["from"])).In(row["to"]), 12);
        Assert.Equal(0, Quantity.Of(32, Plain(row["from"])).In(row["to"]), 12);
    }

    /// <summary>Worked from the row psi to MPa: a degree Celsius is nine fifths of a degree Fahrenheit.</summary>
    [Fact]
    public void A_pressure_for_each_degree_goes_over_as_both_of_its_units_do() =>
        Assert.Equal((double)Number(Rows.Single(r => r["from"] == "psi" && r["to"] == "MPa")["factor"]) * 9 / 5, Quantity.Of(1, "psi/°F").In("MPa/°C"), 1e-15);

    private static void Near(decimal published, decimal ours, decimal allowed) => Assert.InRange(ours, published - allowed, published + allowed);

    private static decimal LastDigit(decimal printed) => new(1, 0, 0, false, printed.Scale);

    private static decimal Number(string text) => decimal.Parse(text, CultureInfo.InvariantCulture);

    /// <summary>Without what explains it: <c>short ton (2000 lb)</c>.</summary>
    private static string Plain(string unit) => unit.Split(" (")[0];
}
