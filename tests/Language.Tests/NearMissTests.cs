using CsCheck;
using Witnessmark.Language.Findings;

namespace Witnessmark.Language.Tests;

public sealed class NearMissTests
{
    private static readonly string[] Names =
        ["backing-ring", "backing-ring-bolts", "brake-stack", "friction-disc", "steel-plate", "end-plate", "lock-pins"];

    private static Gen<string> Word => Gen.String[Gen.Char["abcdeABC-"], 0, 12];

    [Theory]
    [InlineData("backing-rign", "backing-ring")]
    [InlineData("frction-disc", "friction-disc")]
    [InlineData("friction_disc", "friction-disc")]
    [InlineData("Lock-Pins", "lock-pins")]
    [InlineData("ENDPLATE", null)]
    [InlineData("wheel", null)]
    [InlineData("", null)]
    public void The_word_that_was_meant_is_found(string written, string? meant) => Assert.Equal(meant, NearMiss.Of(written, Names));

    [Theory]
    [InlineData("Nn", "Nm")]
    [InlineData("–", null)]
    public void Of_two_as_near_the_one_with_a_wrong_letter_comes_first(string written, string? meant) =>
        Assert.Equal(meant, NearMiss.Of(written, ["N", "in", "Nm", "\""]));

    [Fact]
    public void A_known_word_is_its_own_nearest() => Gen.Select(Word, Word.Array[0, 6]).Sample((word, others) =>
        word.Length == 0 || NearMiss.Of(word, [.. others, word]) == word);

    [Fact]
    public void What_is_suggested_is_a_known_word() => Gen.Select(Word, Word.Array[0, 6]).Sample((word, known) =>
        NearMiss.Of(word, known) is not { } near || known.Contains(near));

    [Fact]
    public void The_order_of_the_known_words_does_not_matter() => Gen.Select(Word, Word.Array[0, 6]).Sample((word, known) =>
        NearMiss.Of(word, known) == NearMiss.Of(word, known.Reverse()));

    [Fact]
    public void One_slip_in_a_word_of_three_letters_or_more_is_forgiven() =>
        (from word in Gen.String[Gen.Char["abcde"], 3, 12]
         from at in Gen.Int[0, word.Length - 1]
         select (word, at))
        .Sample(c => NearMiss.Of(c.word.Remove(c.at, 1).Insert(c.at, "z"), [c.word]) == c.word);

    [Fact]
    public void A_very_long_word_is_left_alone() => Assert.Null(NearMiss.Of(new string('a', 65), [new string('a', 64)]));
}
