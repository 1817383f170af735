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
    public void A_mark_has_no_characters_that_look_alike() =>
        Assert.All(Many(500), m => Assert.DoesNotContain(m, c => "0OQD1IL2Z5S6G8BUV".Contains(c, StringComparison.Ordinal)));

    [Fact]
    public void Marks_of_many_copies_spread_over_the_alphabet()
    {
        var marks = Many(600).ToList();
        Assert.Equal(SetMark.Alphabet.Length, marks.SelectMany(m => m[1..]).Distinct().Count());
        // 600 draws from 361 leave 292 different on average; far fewer would mean a poor spread
        Assert.InRange(marks.Distinct().Count(), 265, 320);
    }

    /// <summary>Each with a clone of his own and none knowing of the other: a first sign that nobody else has.</summary>
    [Fact]
    public void Two_people_never_give_one_mark()
    {
        var first = Issued("K", 300, []);
        var second = Issued("7A", 300, []);
        Assert.Empty(first.Intersect(second));
    }

    [Fact]
    public void A_mark_is_not_given_again_while_a_copy_with_it_is_out()
    {
        var marks = Issued("KR", 2 * SetMark.Each, []);
        Assert.Equal(2 * SetMark.Each, marks.Distinct().Count());
        Assert.Null(SetMark.Free("KR", Copy, marks.Contains));
        Assert.Equal(marks[17], SetMark.Free("KR", Copy, m => m != marks[17]));
    }

    [Fact]
    public void Other_words_or_another_language_give_another_mark()
    {
        var marks = new[] { "es 6A89 FCB9 9BC8", "es 6A89 FCB9 9BC9", "en 6A89 FCB9 9BC8" }.Select(w => Of([.. Copy, CopyWords.Read(w).ToString()]));
        Assert.Equal(3, marks.Distinct().Count());
        // how they are typed does not count
        Assert.Equal(CopyWords.Read("es 6A89 FCB9 9BC8"), CopyWords.Read(" ES 6a89fcb9  9bc8 "));
    }

    /// <summary>Issued in one second, they differ in nothing else.</summary>
    [Fact]
    public void Another_part_gives_another_mark_and_no_part_is_taken_for_words()
    {
        var whole = Demo.Copy;
        var copies = new[] { whole, whole with { Part = "strip" }, whole with { Part = "build" }, whole with { Words = CopyWords.Read("es 6A89 FCB9 9BC8") }, whole with { Part = "es 6A89 FCB9 9BC8" } };
        Assert.Equal(copies.Length, copies.Select(c => string.Join('\n', c.Lines)).Distinct().Count());
        Assert.Equal(copies.Length, copies.Select(c => Of(c.Lines)).Distinct().Count());
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

    private static IEnumerable<string> Many(int copies) => Enumerable.Range(0, copies).Select(i => Of([.. Copy[..1], $"{i}", .. Copy[2..]]));

    private static List<string> Issued(string signs, int copies, HashSet<string> isOut)
    {
        var marks = new List<string>();
        for (var i = 0; i < copies; i++)
        {
            marks.Add(SetMark.Free(signs, [.. Copy[..1], $"{i}", .. Copy[2..]], isOut.Contains)!);
            isOut.Add(marks[^1]);
        }
        return marks;
    }

    private static string Of(string[] copy) => SetMark.Free("K", copy, _ => false)!;
}
