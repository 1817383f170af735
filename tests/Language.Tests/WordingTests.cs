using Witnessmark.Language.Quantities;
using Witnessmark.Language.Wording;

namespace Witnessmark.Language.Tests;

/// <summary>The small parts of a sentence.</summary>
public sealed class WordingTests
{
    [Theory]
    [InlineData("", "")]
    [InlineData("CL", "CL")]
    [InlineData("CL CR", "CL and CR")]
    [InlineData("FL FR CL", "FL, FR and CL")]
    [InlineData("1 2 3 4 5 6", "1, 2, 3, 4, 5 and 6")]
    [InlineData("1 2 3 4 5 6 7 8", "1, 2, 3, 4, 5, 6 and 2 more")]
    public void A_list_reads_as_people_say_it(string words, string said) =>
        Assert.Equal(said, Say.Some(words.Split(' ', StringSplitOptions.RemoveEmptyEntries)));

    [Fact]
    public void A_choice_ends_with_or() => Assert.Equal("dry, oiled or paste", Say.Or(["dry", "oiled", "paste"]));

    [Fact]
    public void A_list_that_must_be_whole_is_never_cut() => Assert.EndsWith("6, 7 and 8", Say.And("12345678".Select(c => $"{c}")), StringComparison.Ordinal);

    [Theory]
    [InlineData(0, "0 queries")]
    [InlineData(1, "1 query")]
    [InlineData(2, "2 queries")]
    public void A_number_agrees_with_its_noun(int number, string said) => Assert.Equal(said, Say.Count(number, "query", "queries"));

    [Theory]
    [InlineData("backing-ring-bolts", "backing ring bolts")]
    [InlineData("TW-340", "TW-340")]
    [InlineData("micrometer-25", "micrometer-25")]
    public void A_name_is_read_without_its_hyphens_and_a_tag_as_it_is_stamped(string name, string said) => Assert.Equal(said, DeclaredName.Spoken(name));

    [Fact]
    public void A_sign_that_stands_alone_stays() => Assert.Equal("cavity depth - sum of disc thickness", DeclaredName.SpokenIn("cavity-depth - sum of disc-thickness"));

    [Fact]
    public void A_part_without_a_mark_goes_by_its_first_letters() => Assert.Equal("LO", DeclaredName.Letters("left-over"));

    [Fact]
    public void A_long_quotation_is_one_line_and_ends_where_a_reader_would_be_lost()
    {
        var quoted = Say.Short("first line\n" + new string('x', 100));

        Assert.StartsWith("first line x", quoted, StringComparison.Ordinal);
        Assert.Equal(61, quoted.Length);
    }

    [Fact]
    public void A_quantity_has_the_other_system_beside_it_and_a_count_has_none()
    {
        Assert.Equal("235 N·m (173 lbf·ft)", Measures.InBoth(Quantity.Of(235, "N·m")));
        Assert.Equal("75 %", Measures.InBoth(Quantity.Of(75, "%")));
    }
}
