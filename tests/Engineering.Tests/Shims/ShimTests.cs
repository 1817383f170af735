using System.Collections.Immutable;
using CsCheck;
using Witnessmark.Engineering.Shims;
using Witnessmark.Harness;
using Witnessmark.Language.Quantities;
using static Witnessmark.Engineering.Tests.Given;

namespace Witnessmark.Engineering.Tests.Shims;

public class ShimTests
{
    private static readonly ImmutableArray<Quantity> Hub = [Q("0.05 mm"), Q("0.10 mm"), Q("0.13 mm"), Q("0.25 mm"), Q("0.50 mm"), Q("0.75 mm")];

    public static TheoryData<string> Cases => [.. Csv.Reference("shim-packs.csv").Select(r => r["id"])];

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_quoted_rule_gives_its_pack(string id)
    {
        var row = Csv.Reference("shim-packs.csv").Single(r => r["id"] == id);
        var setting = new ShimSetting(ShimStock.Of(row["sizes_mm"].Split(' ').Select(s => Q($"{s} mm")), (int)D(row["most"]))!, row["thicker_is"] == "looser", R(row["window"]), Q($"{row["target_mm"]} mm"));
        var choice = setting.Choose(Q($"{row["old_mm"]} mm"), Q($"{row["play_mm"]} mm"))!;
        Assert.Equal(D(row["wanted_mm"]), choice.Wanted.Value.Number);
        Assert.Equal(row["pieces_mm"].Split(' ').Select(D), choice.Pack!.Pieces.Select(p => p.Number));
        Assert.Equal(D(row["play_then_mm"]), choice.Pack.Play.Value.Number);
    }

    [Fact]
    public void The_hub_of_the_demo_is_worked_out_line_by_line()
    {
        var choice = Setting(5).Choose(Q("1.85 mm"), Q("0.31 mm"))!;
        Assert.Equal("1.85 − (0.31 − 0.10) = 1.64 mm", choice.Wanted.Line);
        Assert.Equal("1.59 to 1.69 mm", $"{choice.Window}");
        Assert.Equal("0.75 + 0.75 + 0.13 = 1.63 mm", choice.Pack!.Sum.Line);
        Assert.Equal("0.31 + (1.63 − 1.85) = 0.09 mm", choice.Pack.Play.Line);
    }

    [Fact]
    public void Where_thicker_is_tighter_the_same_play_wants_a_thicker_pack() =>
        Assert.Equal("1.85 + (0.31 − 0.10) = 2.06 mm", (Setting(5) with { ThickerIsLooser = false }).Choose(Q("1.85 mm"), Q("0.31 mm"))!.Wanted.Line);

    [Fact]
    public void Of_two_as_near_the_looser_one_is_taken()
    {
        var setting = new ShimSetting(ShimStock.Of([Q("0.9 mm"), Q("1.1 mm")], 1)!, true, R("-0.1 to 0.1 mm"), Q("0.0 mm"));
        Assert.Equal(1.1m, setting.Choose(Q("1.0 mm"), Q("0.0 mm"))!.Pack!.Sum.Value.Number);
        Assert.Equal(0.9m, (setting with { ThickerIsLooser = false }).Choose(Q("1.0 mm"), Q("0.0 mm"))!.Pack!.Sum.Value.Number);
    }

    [Theory]
    [InlineData("0.40 mm", "1.65 mm", "−1.20 to −1.10 mm is needed; the thinnest pack is 0.25 mm")]
    [InlineData("1.00 mm", "0.48 mm", "0.57 to 0.67 mm is needed; up to 2 pieces make 0.50 or 0.75 mm")]
    [InlineData("1.00 mm", "-1.40 mm", "2.45 to 2.55 mm is needed; up to 2 pieces make at most 1.50 mm")]
    public void No_pack_says_what_is_next_to_it(string old, string play, string says)
    {
        var setting = new ShimSetting(ShimStock.Of([Q("0.25 mm"), Q("0.50 mm"), Q("0.75 mm")], 2)!, true, R("0.05 to 0.15 mm"), Q("0.10 mm"));
        var choice = setting.Choose(Q(old), Q(play))!;
        Assert.Null(choice.Pack);
        Assert.Equal(says, choice.Refusal!.Says);
    }

    [Fact]
    public void Sums_go_in_steps_of_what_divides_every_size()
    {
        Assert.Equal(0.01m, ShimStock.Of(Hub, 4)!.Step.Number);
        Assert.Equal(0.25m, ShimStock.Of([Q("0.50 mm"), Q("0.75 mm")], 4)!.Step.Number);
    }

    [Fact]
    public void Sizes_that_nobody_can_survey_are_refused()
    {
        Assert.Null(ShimStock.Of([], 4));
        Assert.Null(ShimStock.Of([Q("0.05 mm"), Q("0 mm")], 4));
        Assert.Null(ShimStock.Of([Q("5 N·m")], 4));
        Assert.Null(ShimStock.Of(Hub, 11));
        Assert.Null(ShimStock.Of(Enumerable.Range(0, 24).Select(i => Q("1 mm") with { Number = (decimal)Math.Pow(1.37, i) }), 10));
    }

    /// <summary>Against every pack there is, put together one by one.</summary>
    [Fact]
    public void No_pack_is_better_than_the_one_chosen() =>
        Gen.Select(Gen.Int[1, 30].Array[1, 5], Gen.Int[1, 4], Gen.Int[0, 120], Gen.Int[-20, 60], Gen.Int[0, 12], Gen.Bool).Sample(
            (sizes, most, old, play, width, looser) =>
            {
                var setting = new ShimSetting(ShimStock.Of(sizes.Select(Hundredths), most)!, looser, QuantityRange.Between(Hundredths(4), Hundredths(4 + width)), Hundredths(4 + (width / 2)));
                var pack = setting.Choose(Hundredths(old), Hundredths(play))!.Pack;
                var good = Packs([.. sizes.Distinct()], most, 0).Select(p => (p.Count, Play: play + ((looser ? 1 : -1) * (p.Sum() - old)), Sum: p.Sum())).Where(p => p.Play >= 4 && p.Play <= 4 + width).ToList();
                if (good.Count == 0)
                    return pack is null;
                var best = good.Min(p => (p.Count, Math.Abs(p.Play - 4 - (width / 2)), -p.Play));
                var aim = 4 + (width / 2);
                var then = (int)(pack!.Play.Value.Number * 100);
                return (pack.Pieces.Length, Math.Abs(then - aim), -then) == best && pack.Pieces.Sum(p => p.Number) == pack.Sum.Value.Number && pack.Pieces.All(p => sizes.Contains((int)(p.Number * 100)));
            },
            iter: 3_000);

    private static ShimSetting Setting(int most) => new(ShimStock.Of(Hub, most)!, true, R("0.05 to 0.15 mm"), Q("0.10 mm"));

    private static Quantity Hundredths(int number) => Q("1 mm") with { Number = new decimal(Math.Abs(number), 0, 0, number < 0, 2) };

    private static IEnumerable<List<int>> Packs(int[] sizes, int most, int from)
    {
        for (var i = from; i < sizes.Length && most > 0; i++)
        {
            yield return [sizes[i]];
            foreach (var rest in Packs(sizes, most - 1, i))
                yield return [sizes[i], .. rest];
        }
    }
}
