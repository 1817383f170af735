using System.Collections.Immutable;
using System.Globalization;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Reading.Shapes;

namespace Witnessmark.Reading.Data;

/// <summary>Numbers and sizes.</summary>
internal sealed partial class Fields
{
    /// <summary>Signs of a number without a unit.</summary>
    public const int LongestFactor = 20;

    /// <summary>A whole number between the two that its row names.</summary>
    public Located<int>? Count(string key) =>
        Entry(key) is { } entry && RowOf(key) is { Holds: One { Form: CountForm form } } row && Written(entry, "a whole number", row.Example) is { } text
            ? Counted(entry, text, form, row.Example)
            : null;

    /// <summary>A whole number that is a part of a text, as in <c>up to 6</c>.</summary>
    public Located<int>? Counted(DataEntry entry, Located<string> text, CountForm form, string example)
    {
        var isNumber = text.Value.All(char.IsAsciiDigit);
        if (isNumber && int.TryParse(text.Value, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= form.Least && number <= form.Most)
            return text.As(number);
        WrongKind(
            entry,
            $"`{Say.Short(text.Value)}`",
            isNumber ? $"a whole number from {Say.Number(form.Least)} to {Say.Number(form.Most)}" : "a whole number",
            example);
        return null;
    }

    /// <summary>A number without a unit, such as K.</summary>
    public Located<decimal>? Factor(string key)
    {
        if (Entry(key) is not { } entry || RowOf(key) is not { Holds: One { Form: FactorForm } } row || Written(entry, "a number", row.Example) is not { } text)
            return null;
        if (text.Value.Length <= LongestFactor && decimal.TryParse(text.Value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) && number > 0)
            return text.As(number);
        WrongKind(entry, $"`{Say.Short(text.Value)}`", "a number above zero, without a unit,", row.Example);
        return null;
    }

    public Located<Quantity>? Quantity(string key) => Least(key, Read(key, QuantityReader.Quantity, q => q.Unit), q => q.Number);

    public Located<Toleranced>? Toleranced(string key) => Least(key, Read(key, QuantityReader.Toleranced, t => t.Target.Unit), t => t.Target.Number);

    public Located<QuantityRange>? Range(string key) => Read(key, QuantityReader.Range, r => r.Unit);

    /// <summary><c>75 %</c> is 0.75.</summary>
    public Located<decimal>? Share(string key) => Read(key, QuantityReader.Share, _ => null);

    /// <summary><c>20 to 100 %</c> is 0.20 and 1.00.</summary>
    public (decimal Low, decimal High)? Shares(string key)
    {
        if (Range(key) is not { } range)
            return null;
        if (range.Value is { Low: { } low, High: { } high })
            return (low.Value.Number / 100, high.Value.Number / 100);
        WrongKind(map.Find(key)!, $"`{range.At.Text}`", "a range with two ends", RowOf(key).Example);
        return null;
    }

    /// <summary>A list of quantities, no longer than its row allows.</summary>
    public ImmutableArray<Located<Quantity>> Quantities(string key)
    {
        var texts = List(key);
        if (texts.IsEmpty || RowOf(key) is not { Holds: Many { Form: SizeForm form } many } row)
            return [];
        var sizes = texts.Select(text => Parse(text, $"`{key}` of {What}", row.Example, form, QuantityReader.Quantity, q => q.Unit)).OfType<Located<Quantity>>().ToImmutableArray();
        if (sizes.Length > many.Most)
            WrongKind(map.Find(key)!, $"a list of {Say.Number(sizes.Length)}", $"a list of at most {Say.Number(many.Most.Value)} sizes", row.Example);
        else if (form.Least == LeastSize.AboveZero && sizes.FirstOrDefault(s => s.Value.Number <= 0) is { Value.Unit: not null } none)
            WrongKind(map.Find(key)!, $"a list with `{none.At.Text}` in it", "a list of sizes above zero", row.Example);
        else
            return sizes;
        return [];
    }

    /// <summary>A quantity that is itself a key, as the radius in a crane's chart.</summary>
    public Located<Quantity>? KeyAsQuantity(Located<string> key) =>
        Shape is { OtherKeys: SizeForm form, Other: { } row } ? Parse(key, $"A key of {What}", row.Key, form, QuantityReader.Quantity, q => q.Unit) : null;

    private Located<T>? Least<T>(string key, Located<T>? read, Func<T, decimal> number)
        where T : struct
    {
        if (read is not { } found || RowOf(key) is not { Holds: One { Form: SizeForm form } } row)
            return read;
        var size = number(found.Value);
        if (form.Least == LeastSize.Anything || size > 0 || (size == 0 && form.Least == LeastSize.Zero))
            return read;
        WrongKind(map.Find(key)!, $"`{Say.Short(found.At.Text)}`", form.Least == LeastSize.Zero ? "nothing below zero" : "a size above zero", row.Example);
        return null;
    }

    private Located<T>? Read<T>(string key, Func<string, Parsed<T>> read, Func<T, Unit?> unitOf)
        where T : struct =>
        Entry(key) is { } entry && RowOf(key) is { Holds: One { Form: SizeForm form } } row && Written(entry, Belongs(form), row.Example) is { } text
            ? Parse(text, $"`{key}` of {What}", row.Example, form, read, unitOf)
            : null;

    private Located<T>? Parse<T>(Located<string> text, string whose, string example, SizeForm form, Func<string, Parsed<T>> read, Func<T, Unit?> unitOf)
        where T : struct
    {
        var parsed = read(text.Value);
        if (parsed.Fault is { } fault)
        {
            Findings.Add(QuantityFindings.Of(text, fault, whose, example));
            return null;
        }
        if (unitOf(parsed.Value) is { } unit && form.Kind is { } kind && unit.Kind != kind)
        {
            Findings.Add(QuantityFindings.WrongKind(text, unit, whose, [kind], example));
            return null;
        }
        return text.As(parsed.Value);
    }
}
