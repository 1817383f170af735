using System.Text.RegularExpressions;
using CsCheck;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Language.Tests;

/// <summary>A pattern takes what the reader takes, and refuses what the reader refuses unless two numbers or units would have to be compared.</summary>
public sealed class QuantityPatternTests
{
    /// <summary>What a pattern cannot see.</summary>
    private static readonly QuantityProblem[] Compared = [QuantityProblem.Backward, QuantityProblem.KindsDiffer, QuantityProblem.TooLong];

    private static readonly Gen<string> Sign = OneOf("", "", "", "-", "\u2212");
    private static readonly Gen<string> Digits = OneOf("0", "7", "12", "0.5", "4.60", ".25", "1\u00A0200", "12 405", "1,5", "1.2.3", "007", "", "1/2", "4e3");
    private static readonly Gen<string> Blank = OneOf("", " ", "  ", "\u00A0");
    private static readonly Gen<string> AnyUnit = OneOf([.. UnitTable.Spellings, "", "", "ton", "N\u22C5m", "N\u2013m", "ft  lb", "mmm", "x", "\u03BCm", "\u00BAC"]);
    private static readonly Gen<string> Size = Gen.Select(Sign, Digits, Blank, AnyUnit, (s, d, b, u) => s + d + b + u);
    private static readonly Gen<string> Word = OneOf("below", "up to", "above", "from", "From", "to", "to below", "or less", "or more", "±", "+-", "+/-", "(", ")", "-", "");
    private static readonly Gen<string> Text = Gen.Select(Word, Size, Word, Size, Word, (a, s, b, t, c) => $"{a} {s} {b} {t} {c}".Trim());

    private static readonly Regex[] Quantities = [.. QuantityPatterns.Kinds.Select(kind => new Regex(QuantityPatterns.Quantity(kind)))];
    private static readonly Regex[] WithTolerance = [.. QuantityPatterns.Kinds.Select(kind => new Regex(QuantityPatterns.Toleranced(kind)))];
    private static readonly Regex[] Ranges = [.. QuantityPatterns.Kinds.Select(kind => new Regex(QuantityPatterns.Range(kind)))];
    private static readonly Regex[] Shares = [new(QuantityPatterns.Share)];

    public static TheoryData<string, string> Cases => [.. QuantityCaseTests.Cases().Select(c => (c.Data.Item1, c.Data.Item2))];

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_pattern_says_what_the_reader_says(string how, string text) => Agree(how, text);

    [Theory]
    [InlineData("quantity")]
    [InlineData("toleranced")]
    [InlineData("range")]
    [InlineData("share")]
    public void So_it_does_on_texts_that_nobody_wrote(string how)
    {
        Size.Sample(text => Agree(how, text), iter: 3000);
        Text.Sample(text => Agree(how, text), iter: 3000);
    }

    [Fact]
    public void A_size_above_zero_is_one_that_is_above_zero() =>
        Size.Sample(text =>
        {
            if (QuantityReader.Quantity(text) is not { Ok: true, Value: var q })
                return;
            Assert.Equal(q.Number > 0, Regex.IsMatch(text, QuantityPatterns.Quantity(q.Unit.Kind, LeastSize.AboveZero)));
            Assert.Equal(q.Number >= 0, Regex.IsMatch(text, QuantityPatterns.Quantity(q.Unit.Kind, LeastSize.Zero)));
        }, iter: 1000);

    [Fact]
    public void A_unit_of_another_kind_is_refused() =>
        Assert.All(UnitTable.All, unit => Assert.Equal([unit.Kind], QuantityPatterns.Kinds.Where(kind => Regex.IsMatch($"5 {unit.Symbol}", QuantityPatterns.Quantity(kind)))));

    [Theory]
    [InlineData(1, 999)]
    [InlineData(0, 999)]
    [InlineData(1, 24)]
    [InlineData(1, 10)]
    [InlineData(7, 7)]
    [InlineData(95, 1204)]
    [InlineData(0, 0)]
    public void Whole_numbers_are_those_from_one_to_the_other(int least, int most)
    {
        var pattern = new Regex($"^{WholeNumbers.Pattern(least, most)}$");
        Assert.All(Enumerable.Range(0, 2000), n => Assert.Equal(n >= least && n <= most, pattern.IsMatch($"{n}")));
        Assert.Equal(least <= 7 && most >= 7, pattern.IsMatch("007"));
        Assert.DoesNotMatch(pattern, "");
        Assert.DoesNotMatch(pattern, "-1");
    }

    private static Gen<string> OneOf(params string[] words) => Gen.Int[0, words.Length - 1].Select(i => words[i]);

    private static void Agree(string how, string text)
    {
        var (fault, patterns) = how switch
        {
            "quantity" => (QuantityReader.Quantity(text).Fault, Quantities),
            "toleranced" => (QuantityReader.Toleranced(text).Fault, WithTolerance),
            "range" => (QuantityReader.Range(text).Fault, Ranges),
            _ => (QuantityReader.Share(text).Fault, Shares),
        };
        var taken = text.Length <= QuantityPatterns.LongestText && patterns.Any(p => p.IsMatch(text));
        if (fault is null || !Compared.Contains(fault.Problem))
            Assert.True(taken == (fault is null), $"{how} `{text}`: the reader says {fault?.Problem.ToString() ?? "yes"}, the pattern {(taken ? "yes" : "no")}");
    }
}
