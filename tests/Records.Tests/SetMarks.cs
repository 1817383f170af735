using Witnessmark.Records.Issuing;

namespace Witnessmark.Records.Tests;

public sealed class SetMarks
{
    private static readonly string[] Copy = [new('a', 64), "14", "0417", "CL", "2031-06-11T06:40+02:00", "RK"];

    [Fact]
    public void A_mark_is_the_same_every_time_it_is_worked_out() => Assert.Equal(Of(Copy), Of(Copy));

    [Fact]
    public void Another_hash_unit_serial_place_time_or_issuer_gives_another_mark()
    {
        for (var i = 0; i < Copy.Length; i++)
        {
            string[] other = [.. Copy];
            other[i] = i == 0 ? new string('b', 64) : other[i] + "1";
            Assert.NotEqual(Of(Copy), Of(other));
        }
    }

    [Fact]
    public void A_mark_has_no_characters_that_look_alike()
    {
        for (var i = 0; i < 500; i++)
            Assert.DoesNotContain(SetMark.Of(Copy[0], $"{i}", Copy[2], Copy[3], Copy[4], Copy[5]), c => "0OQD1IL2Z5S6G8BUV".Contains(c, StringComparison.Ordinal));
    }

    [Fact]
    public void Marks_of_many_copies_spread_over_the_alphabet()
    {
        var marks = Enumerable.Range(0, 2000).Select(i => SetMark.Of(Copy[0], $"{i}", Copy[2], Copy[3], Copy[4], Copy[5])).ToList();
        Assert.Equal(SetMark.Alphabet.Length, marks.SelectMany(m => m).Distinct().Count());
        // 2000 draws from 6859 leave 1735 different on average; far fewer would mean a poor spread
        Assert.InRange(marks.Distinct().Count(), 1650, 1820);
    }

    [Fact]
    public void Two_copies_of_one_second_never_share_a_mark_when_one_is_translated()
    {
        for (var i = 0; i < 20_000; i++)
            Assert.NotEqual(
                SetMark.Of(Copy[0], $"{i}", Copy[2], Copy[3], Copy[4], Copy[5]),
                SetMark.Of(Copy[0], $"{i}", Copy[2], Copy[3], Copy[4], Copy[5], CopyWords.Of("es", "6a89fcb99bc8")));
    }

    [Fact]
    public void Other_words_or_another_language_give_another_mark()
    {
        var marks = new[] { "es 6A89 FCB9 9BC8", "es 6A89 FCB9 9BC9", "en 6A89 FCB9 9BC8" }.Select(w => SetMark.Of(Copy[0], Copy[1], Copy[2], Copy[3], Copy[4], Copy[5], CopyWords.Read(w)));
        Assert.Equal(3, marks.Distinct().Count());
        // how they are typed does not count
        Assert.Equal(CopyWords.Read("es 6A89 FCB9 9BC8"), CopyWords.Read(" ES 6a89fcb9  9bc8 "));
    }

    [Fact]
    public void No_copy_has_the_mark_of_a_trial_sheet_and_no_page_of_one_has_the_mark_of_another()
    {
        Assert.DoesNotContain(TrialMark.First, SetMark.Alphabet);
        foreach (var mark in from i in Enumerable.Range(0, 500) from language in new[] { "en", "es" } select TrialMark.Of(Copy[0], $"{i}", language))
        {
            Assert.True(TrialMark.IsOne(mark) && TrialMark.IsOne(TrialMark.Stray(mark)));
            Assert.Equal(SetMark.Length, mark.Length);
            Assert.All(mark.Zip(TrialMark.Stray(mark)).Skip(1), c => Assert.NotEqual(c.First, c.Second));
        }
    }

    private static string Of(string[] c) => SetMark.Of(c[0], c[1], c[2], c[3], c[4], c[5]);
}
