using CsCheck;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Language.Tests;

public sealed class QuantityLawTests
{
    private static readonly string[] Pieces =
    [
        "455", "4.60", "4,60", "12 405", "-", "−", "±", "+-", "N·m", "Nm", "ft-lb", "mm", "%", "°C", "(", ")", " ", "  ", "to", "below",
        "above", "from", "up to", "or less", "or more", "/", ".", ",", "e3", "\u00A0", "\u202F", "½", "١٢", "999999999999999999", "Nn",
        "ton", "lb in", "\t", "\n", "𝟙", "\"", "'",
    ];

    private static Gen<string> Text => Gen.OneOf(
        Gen.String,
        Gen.OneOf(Pieces).List[0, 12].Select(p => string.Concat(p)),
        Gen.OneOf(Pieces).List[0, 12].Select(p => string.Join(' ', p)));

    private static Gen<long> Digits => Gen.Long[-999_999_999_999_999_999, 999_999_999_999_999_999];

    private static Gen<Quantity> Any => Gen.Select(Digits, Gen.Byte[0, 17], Gen.OneOf(UnitTable.All.ToArray()), (digits, scale, unit) =>
        new Quantity(digits * new decimal(1, 0, 0, false, scale), unit));

    [Fact]
    public void No_text_at_all_is_too_much() => Text.Sample(
        text =>
        {
            Inside(text, QuantityReader.Quantity(text).Fault);
            Inside(text, QuantityReader.Toleranced(text).Fault);
            Inside(text, QuantityReader.Range(text).Fault);
            Inside(text, QuantityReader.Share(text).Fault);
        },
        iter: 20_000);

    [Fact]
    public void Whoever_follows_the_suggestions_comes_to_an_end() => Text.Sample(
        text =>
        {
            const int MostFaults = 50;
            var steps = 0;
            while (QuantityReader.Range(text).Fault is { Suggestion: { } meant, Problem: not QuantityProblem.UnknownUnit })
            {
                Assert.NotEqual(text, meant);
                Assert.True(++steps < MostFaults, text);
                text = meant;
            }
        },
        iter: 20_000);

    [Fact]
    public void A_text_over_the_limit_is_too_long_and_only_the_rest_is_marked()
    {
        var fault = QuantityReader.Quantity("5 " + new string('m', 300)).Fault;

        Assert.Equal(QuantityProblem.TooLong, fault?.Problem);
        Assert.Equal(200, fault?.At.Start);
    }

    [Fact]
    public void A_quantity_printed_is_read_back_with_its_decimals() => Any.Sample(quantity =>
    {
        var read = QuantityReader.Quantity(quantity.ToString());

        Assert.Null(read.Fault);
        Assert.Equal(quantity, read.Value);
        Assert.Equal(quantity.Decimals, read.Value.Decimals);
    });

    [Fact]
    public void A_text_that_is_read_says_the_same_when_printed_and_read_again() => Text.Sample(
        text =>
        {
            if (QuantityReader.Quantity(text) is { Ok: true } quantity)
                Assert.Equal(quantity.Value, QuantityReader.Quantity($"{quantity.Value}").Value);
            if (QuantityReader.Toleranced(text) is { Ok: true } toleranced)
                Assert.Equal(toleranced.Value with { Beside = null }, QuantityReader.Toleranced($"{toleranced.Value}").Value);
            if (QuantityReader.Range(text) is { Ok: true } range)
                Assert.Equal(range.Value, QuantityReader.Range($"{range.Value}").Value);
        },
        iter: 20_000);

    [Fact]
    public void A_range_printed_is_read_back_the_same() =>
        Gen.Select(Any, Any, Gen.Bool, Gen.Bool, Gen.Int[0, 2]).Sample((a, b, lowInside, highInside, ends) =>
        {
            var (low, high) = a.Number < b.Number ? (a, b) : (b, a);
            var range = new QuantityRange(
                ends == 1 ? null : new Bound(low with { Unit = a.Unit }, lowInside),
                ends == 2 ? null : new Bound(high with { Unit = a.Unit }, highInside));
            if (!range.IsEmpty)
                Assert.Equal(range, QuantityReader.Range($"{range}").Value);
        });

    [Fact]
    public void A_toleranced_value_printed_is_read_back_the_same() => Gen.Select(Any, Any).Sample((target, off) =>
    {
        var toleranced = new Toleranced(target, target with { Number = Math.Abs(off.Number) });

        Assert.Equal(toleranced, QuantityReader.Toleranced($"{toleranced}").Value);
    });

    [Fact]
    public void Every_shop_spelling_is_read_behind_a_number()
    {
        foreach (var unit in UnitTable.All)
            foreach (var spelling in unit.Spellings.Prepend(unit.Symbol))
            {
                Assert.Equal(new Quantity(4.60m, unit), QuantityReader.Quantity($"4.60 {spelling}").Value);
                if (!char.IsAsciiDigit(spelling[0]))
                    Assert.Equal(new Quantity(4.60m, unit), QuantityReader.Quantity($"4.60{spelling}").Value);
                Assert.Equal($"2.8 to 3.6 {unit}", $"{QuantityReader.Range($"2.8 {spelling} to 3.6 {spelling}").Value}");
                Assert.Equal($"455 ± 25 {unit}", $"{QuantityReader.Toleranced($"455 {spelling} ± 25 {spelling} (455 {spelling})").Value}");
            }
    }

    private static void Inside(string text, QuantityFault? fault)
    {
        if (fault is null)
            return;
        Assert.InRange(fault.At.Start, 0, text.Length);
        Assert.InRange(fault.At.End, fault.At.Start, text.Length);
        Assert.True(fault.At.Length > 0 || text.Trim().Length == 0 || fault.At.Start == text.Length, $"nothing is marked in «{text}»: {fault}");
    }
}
