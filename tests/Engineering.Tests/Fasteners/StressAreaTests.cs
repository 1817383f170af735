using Witnessmark.Engineering.Fasteners;
using Witnessmark.Harness;
using Witnessmark.Language.Model;
using static Witnessmark.Engineering.Tests.Given;

namespace Witnessmark.Engineering.Tests.Fasteners;

/// <summary>Source of each row: the source column of threads-metric.csv (ISO 898-1 and GB/T 16823.1 in reprints).</summary>
public class StressAreaTests(ITestOutputHelper output)
{
    /// <summary>Published areas are rounded to three figures.</summary>
    private const double Rounding = 0.0045;

    [Theory]
    [InlineData("text-found", 42)]
    [InlineData("memory", 13)]
    public void Areas_agree_with_the_published_ones_read_in_text_and_with_those_from_memory(string verified, int rows)
    {
        var deviation = new Deviation($"stress areas, {verified}");
        var published = Csv.Reference("threads-metric.csv").Where(r => r["verified"] == verified).ToList();
        Assert.Equal(rows, published.Count);
        foreach (var row in published)
        {
            var area = StressArea.Of(new MetricThread(Q($"{row["d_mm"]} mm"), Q($"{row["pitch_mm"]} mm")))!;
            Assert.True(deviation.Add(row["designation"], area.Value.In("mm²"), (double)D(row["As_published_mm2"])) <= Rounding, $"{row["designation"]}: {area.Line}");
        }
        output.WriteLine(deviation.ToString());
    }

    [Fact]
    public void A_thread_in_inches_has_the_same_area_as_in_millimetres()
    {
        var inches = StressArea.Of(new MetricThread(Q("1 in"), Q("0.1 in")))!;
        var millimetres = StressArea.Of(new MetricThread(Q("25.4 mm"), Q("2.54 mm")))!;
        Assert.Equal((double)millimetres.Value.Number, (double)inches.Value.Number, 1e-12);
    }

    [Theory]
    [InlineData("0 mm", "2 mm")]
    [InlineData("16 mm", "0 mm")]
    [InlineData("16 mm", "-2 mm")]
    [InlineData("2 mm", "16 mm")]
    [InlineData("16 kg", "2 mm")]
    [InlineData("16 mm", "2 bar")]
    [InlineData("999999999999999999 km", "2 mm")]
    [InlineData("0.00000000002 mm", "0.00000000001 mm")]
    public void A_thread_that_cannot_be_cut_has_no_area(string diameter, string pitch) =>
        Assert.Null(StressArea.Of(new MetricThread(Q(diameter), Q(pitch))));
}
