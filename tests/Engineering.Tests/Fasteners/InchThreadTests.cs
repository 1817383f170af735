using Witnessmark.Engineering.Fasteners;
using Witnessmark.Harness;
using Witnessmark.Language.Model;
using static Witnessmark.Engineering.Tests.Given;

namespace Witnessmark.Engineering.Tests.Fasteners;

/// <summary>Source of each row: the source column of threads-inch.csv (unified series in published tables, all rows read in text).</summary>
public class InchThreadTests(ITestOutputHelper output)
{
    /// <summary>Published areas have three or four figures.</summary>
    private const double Rounding = 0.004;

    [Fact]
    public void Areas_agree_with_the_published_ones()
    {
        var deviation = new Deviation("inch stress areas");
        var published = Csv.Reference("threads-inch.csv");
        Assert.Equal(33, published.Count);
        Assert.All(published, row => Assert.Equal("text-found", row["verified"]));
        foreach (var row in published)
        {
            var area = StressArea.Of(new InchThread(row["size_in"], Q($"{row["d_in"]} in"), (int)D(row["threads_per_inch"]), row["series"]))!;
            Assert.True(deviation.Add(row["designation"], area.Value.In("in²"), (double)D(row["At_published_in2"])) <= Rounding, $"{row["designation"]}: {area.Line}");
        }
        output.WriteLine(deviation.ToString());
    }

    [Fact]
    public void The_coarse_and_fine_series_are_the_published_ones()
    {
        var published = Csv.Reference("threads-inch.csv").Where(r => r["series"] is "UNC" or "UNF").Select(r => $"{r["size_in"]} {r["d_in"]} {r["series"]} {r["threads_per_inch"]}");
        var ours = InchSizes.All.Where(s => s.Name[0] != '#').SelectMany(s => new[] { $"{s.Name} {s.Diameter} UNC {s.Coarse}", $"{s.Name} {s.Diameter} UNF {s.Fine}" });
        Assert.Equal(published.Order(StringComparer.Ordinal), ours.Order(StringComparer.Ordinal));
    }

    /// <summary>From memory, ASME B1.1: a numbered size is 0.060 in and 0.013 in more for each number.</summary>
    [Fact]
    public void A_numbered_size_follows_from_its_number() =>
        Assert.All(InchSizes.All.Where(s => s.Name[0] == '#'), s => Assert.Equal(0.060m + (0.013m * D(s.Name[1..])), s.Diameter));

    [Theory]
    [InlineData("0 in", 11)]
    [InlineData("0.625 in", 0)]
    [InlineData("0.625 in", -11)]
    [InlineData("0.5 in", 2)]
    [InlineData("0.625 lb", 11)]
    [InlineData("999999999999999999 mi", 11)]
    public void A_thread_that_cannot_be_cut_has_no_area(string diameter, int perInch) =>
        Assert.Null(StressArea.Of(new InchThread("5/8", Q(diameter), perInch, "UNC")));

    [Fact]
    public void The_line_can_be_followed_by_hand() =>
        Assert.Equal("π/4 × (0.625 − 0.9743 / 11)² = 0.2260 in²", StressArea.Of(Inch("5/8-11 UNC"))!.Line);
}
