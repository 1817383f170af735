using Witnessmark.Harness;
using Witnessmark.Language.Model;
using Witnessmark.Records.Wear;

namespace Witnessmark.Records.Tests;

/// <summary>What a complete sign-off says of parts that had run.</summary>
public sealed class WornParts
{
    private const string Sheet = "machines/okr-34.yaml";
    private static readonly string Case = Repo.Read("tests", "Records.Tests", "Cases", "complete-natural-scatter.yaml");

    [Fact]
    public void Plates_that_went_back_in_give_the_least_of_them_at_the_hours_of_the_machine()
    {
        var reading = Assert.Single(Readings(Demo.Library));
        Assert.Equal("okr-34, unit 14 CL, steel-plate, plate-thickness: 3.16 mm at 12405 h, 2031-06-11 unit 14 CL WB-40", Said(reading));
    }

    /// <summary>Discs are replaced as a set, and only new ones pass: a line through them would show no wear.</summary>
    [Fact]
    public void Discs_give_a_reading_only_where_worn_ones_pass()
    {
        var worn = Demo.Changed([(Sheet, t => t.Replace("thin: below 4.92 mm", "thin: below 4.60 mm", StringComparison.Ordinal).Replace("good: 4.92 to 5.08 mm", "good: 4.60 to 5.08 mm", StringComparison.Ordinal))]);
        Assert.Equal(["disc-thickness 5.00 mm", "plate-thickness 3.16 mm"], Readings(worn).Select(r => $"{r.Reading.Id.Value} {r.Value}"));
    }

    [Theory]
    [InlineData("    judge: least\n", "    judge: most\n", "3.18 mm")]
    [InlineData("    judge: least\n", "    judge: each\n", "3.16 mm")]
    [InlineData("    judge: least\n", "    judge: sum\n", null)]
    [InlineData("    worn-at: 3.10 mm\n", "", null)]
    public void The_value_is_the_one_that_was_judged(string from, string to, string? value) =>
        Assert.Equal(value, Readings(Demo.With(Sheet, from, to)).Select(r => $"{r.Value}").SingleOrDefault());

    [Theory]
    [InlineData("12405 h", true)]
    [InlineData("999999999 h", false)]
    public void Hours_are_those_that_a_machine_can_have(string hours, bool can) =>
        Assert.Equal(can, WornReadings.HasHours(Demo.Read("record.yaml", Case.Replace("12405 h", hours, StringComparison.Ordinal))));

    private static List<WornReading> Readings(Library library) => [.. WornReadings.Of(Demo.Read("record.yaml", Case, library), library)];

    private static string Said(WornReading r) => $"{r.Machine}, unit {r.Unit} {r.Place}, {r.Part.Id.Value}, {r.Reading.Id.Value}: {r.Value} at {r.Hours} h, {r.Record}";
}
