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
    public Located<int>? Count(string key) => CountUpTo(key)?.Number;

    /// <summary><c>3</c>, or <c>up to 6</c> where the row has a word that may stand in front of the number.</summary>
    public (Located<int> Number, bool UpTo)? CountUpTo(string key)
    {
        if (Entry(key) is not { } entry || Written(entry, "a whole number", RowOf(key).Example) is not { } text)
            return null;
        var form = Asked<CountForm>(key);
        var upTo = form.Before is { } word && text.Value.StartsWith(word, StringComparison.Ordinal);
        var written = upTo ? text.Value[form.Before!.Length..].Trim() : text.Value;
        var isNumber = written.All(char.IsAsciiDigit);
        if (isNumber && int.TryParse(written, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= form.Least && number <= form.Most)
            return (text.As(number), upTo);
        WrongKind(
            entry,
            $"`{Say.Short(text.Value)}`",
            isNumber ? $"a whole number from {Say.Number(form.Least)} to {Say.Number(form.Most)}" : "a whole number",
            $"{(upTo ? form.Before : "")}{RowOf(key).Example}");
        return null;
    }

    /// <summary>A number without a unit, such as K.</summary>
    public Located<decimal>? Factor(string key)
    {
        if (Entry(key) is not { } entry || Written(entry, "a number", RowOf(key).Example) is not { } text)
            return null;
        _ = Asked<FactorForm>(key);
        if (text.Value.Length <= LongestFactor && decimal.TryParse(text.Value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) && number > 0)
            return text.As(number);
        WrongKind(entry, $"`{Say.Short(text.Value)}`", "a number above zero, without a unit,", RowOf(key).Example);
        return null;
    }

    public Located<Quantity>? Quantity(string key) => Least(key, Read(key, Size.Quantity, QuantityReader.Quantity, q => q.Unit), q => q.Number);

    public Located<Toleranced>? Toleranced(string key) => Least(key, Read(key, Size.Toleranced, QuantityReader.Toleranced, t => t.Target.Unit), t => t.Target.Number);

    public Located<QuantityRange>? Range(string key) => Read(key, Size.Range, QuantityReader.Range, r => r.Unit);

    /// <summary><c>75 %</c> is 0.75.</summary>
    public Located<decimal>? Share(string key) => Read(key, Size.Share, QuantityReader.Share, _ => null);

    /// <summary><c>20 to 100 %</c> is 0.20 and 1.00.</summary>
    public (decimal Low, decimal High)? Shares(string key)
    {
        if (Read(key, Size.Shares, QuantityReader.Range, r => r.Unit) is not { } range)
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
        if (texts.IsEmpty)
            return [];
        var (many, row) = (Held<Many>(key), RowOf(key));
        var form = many.Form as SizeForm ?? throw Misread(key, "quantities");
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
        if (read is not { } found)
            return null;
        var (size, least) = (number(found.Value), Asked<SizeForm>(key).Least);
        if (least == LeastSize.Anything || size > 0 || (size == 0 && least == LeastSize.Zero))
            return read;
        WrongKind(map.Find(key)!, $"`{Say.Short(found.At.Text)}`", least == LeastSize.Zero ? "nothing below zero" : "a size above zero", RowOf(key).Example);
        return null;
    }

    private Located<T>? Read<T>(string key, Size size, Func<string, Parsed<T>> read, Func<T, Unit?> unitOf)
        where T : struct
    {
        if (Entry(key) is not { } entry)
            return null;
        var form = Asked<SizeForm>(key);
        if (form.Size != size)
            throw Misread(key, $"{size}");
        var example = RowOf(key).Example;
        return Written(entry, Belongs(form), example) is { } text ? Parse(text, $"`{key}` of {What}", example, form, read, unitOf) : null;
    }

    private TForm Asked<TForm>(string key)
        where TForm : Form => Held<One>(key).Form as TForm ?? throw Misread(key, typeof(TForm).Name);

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
