using System.Collections.Immutable;
using CsCheck;
using Witnessmark.Engineering.Tightening;
using Witnessmark.Harness;

namespace Witnessmark.Engineering.Tests.Tightening;

/// <summary>Source of each list: the source column of star-sequences.csv. Most are remembered, so laws count more than lists.</summary>
public class StarSequenceTests(ITestOutputHelper output)
{
    [Theory]
    [InlineData(5, "text-found")]
    [InlineData(12, "text-found")]
    [InlineData(4, "memory")]
    [InlineData(8, "memory")]
    [InlineData(16, "memory")]
    [InlineData(20, "memory")]
    [InlineData(24, "memory")]
    [InlineData(28, "memory")]
    [InlineData(32, "memory")]
    public void The_list_is_the_published_one_read_in_text_or_from_memory(int bolts, string verified)
    {
        var row = Csv.Reference("star-sequences.csv").Single(r => r["bolts"] == $"{bolts}" && r["verified"] == verified);
        Assert.Equal(row["sequence"], Text(StarSequence.For(bolts)));
        output.WriteLine($"{bolts} bolts, {verified}: {row["source"]}");
    }

    /// <summary>Both lists keep every law. Ours turns the other way round from bolt 1; from memory: row of 10 of star-sequences.csv.</summary>
    [Fact]
    public void The_list_for_ten_is_the_demos_and_mirrors_the_remembered_one()
    {
        Assert.Equal("1 6 4 9 2 7 5 10 3 8", Text(StarSequence.For(10)));
        var remembered = Csv.Reference("star-sequences.csv").Single(r => r["bolts"] == "10")["sequence"].Split(' ').Select(int.Parse).ToImmutableArray();
        Assert.Equal(remembered[2..4].Select(b => 12 - b).Order(), StarSequence.For(10)[2..4].Order());
        Assert.Empty(StarSequence.Problems(remembered, 10));
    }

    [Fact]
    public void The_list_for_six_is_the_one_from_memory() =>
        Assert.Equal(Csv.Reference("star-sequences.csv").Single(r => r["bolts"] == "6")["sequence"], Text(StarSequence.For(6)));

    [Fact]
    public void Three_go_round() => Assert.Equal("1 2 3", Text(StarSequence.For(3)));

    public static TheoryData<int> Counts => [.. Enumerable.Range(StarSequence.FewestBolts, StarSequence.MostBolts - StarSequence.FewestBolts + 1)];

    [Theory]
    [MemberData(nameof(Counts))]
    public void Every_list_we_make_keeps_the_laws_that_written_ones_are_held_to(int bolts) => Assert.Empty(StarSequence.Problems(StarSequence.For(bolts), bolts));

    [Theory]
    [MemberData(nameof(Counts))]
    public void Every_bolt_comes_once(int bolts) => Assert.Equal(Enumerable.Range(1, bolts), StarSequence.For(bolts).Order());

    [Theory]
    [MemberData(nameof(Counts))]
    public void Pairs_are_opposite_and_each_four_reach_every_quarter(int bolts)
    {
        var sequence = StarSequence.For(bolts);
        for (var i = 0; bolts % 2 == 0 && i < bolts; i += 2)
            Assert.Equal(bolts / 2, Math.Abs(sequence[i] - sequence[i + 1]));
        for (var i = 0; bolts % 4 == 0 && i < bolts; i += 4)
            Assert.Equal([0, 1, 2, 3], sequence[i..(i + 4)].Select(b => (b - 1) / (bolts / 4)).Order());
    }

    [Theory]
    [MemberData(nameof(Counts))]
    public void Neighbours_never_follow_each_other_from_five_bolts_on(int bolts)
    {
        var sequence = StarSequence.For(bolts);
        if (bolts >= 5)
            Assert.All(sequence.Zip(sequence.Skip(1)), pair => Assert.InRange(Math.Abs(pair.First - pair.Second), 2, bolts - 2));
    }

    [Theory]
    [InlineData(2)]
    [InlineData(0)]
    [InlineData(-12)]
    [InlineData(97)]
    [InlineData(int.MaxValue)]
    public void Too_few_or_too_many_have_no_list(int bolts)
    {
        Assert.Empty(StarSequence.For(bolts));
        Assert.Equal(SequenceProblem.CountOutOfRange, Assert.Single(StarSequence.Problems([1, 2], bolts)).Problem);
    }

    [Theory]
    [InlineData("1 3 2 4", "")]
    [InlineData("1 3 4 2", "")]
    [InlineData("1 2 3 4", "bolt 3 is across from bolt 1, not bolt 2; bolt 1 is across from bolt 3, not bolt 4")]
    [InlineData("1 3 2", "bolt 4 is left out")]
    [InlineData("1 3 2 2", "bolt 2 stands there twice; bolt 4 is left out")]
    [InlineData("1 3 2 5", "there is no bolt 5 among 4; bolt 4 is left out")]
    [InlineData("1 5 2 6 3 7 4 8", "bolts 1 5 2 6 leave a quarter of the circle empty; bolts 3 7 4 8 leave a quarter of the circle empty", 8)]
    [InlineData("1 7 3 5 2 4 6", "bolts 1 and 7 are neighbours", 7)]
    [InlineData("1 2 3 4 5", "bolts 1 and 2 are neighbours; bolts 2 and 3 are neighbours; bolts 3 and 4 are neighbours; bolts 4 and 5 are neighbours", 5)]
    public void A_written_list_is_told_what_is_wrong_with_it(string written, string says, int bolts = 4) =>
        Assert.Equal(says, string.Join("; ", StarSequence.Problems([.. written.Split(' ').Select(int.Parse)], bolts).Select(p => p.Says)));

    [Fact]
    public void Two_bolts_that_change_places_are_always_noticed() =>
        Gen.Select(Gen.Int[3, 24], Gen.Int[0, 47], Gen.Int[0, 47]).Where(g => g.Item2 / 2 % g.Item1 != g.Item3 / 2 % g.Item1).Sample((half, a, b) =>
        {
            var bolts = half * 2;
            var (first, second) = (a % bolts, b % bolts);
            if (first / 2 == second / 2)
                return true;
            var sequence = StarSequence.For(bolts).ToArray();
            (sequence[first], sequence[second]) = (sequence[second], sequence[first]);
            return StarSequence.Problems([.. sequence], bolts).Any(p => p.Problem == SequenceProblem.NotOpposite);
        });

    private static string Text(ImmutableArray<int> sequence) => string.Join(' ', sequence);
}
