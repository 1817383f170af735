using System.Collections.Immutable;
using System.Globalization;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;

namespace Witnessmark.Reading.Data;

/// <summary>Quantities. <c>kinds</c> are those of the unit table that may stand there (torque, length …); none: any.</summary>
internal sealed partial class Fields
{
    /// <summary>Sizes that may be nothing at all. Elsewhere a rule would find nothing to reckon with, and be silent.</summary>
    private static readonly ImmutableArray<string> MayBeZero = ["angle", "margin", "extension", "hours", "settle", "target"];

    public Located<Quantity>? Quantity(string key, string example, params ImmutableArray<string> kinds) =>
        Sized(key, example, Read(key, example, QuantityReader.Quantity, q => q.Unit, kinds), q => q.Number);

    public Located<Toleranced>? Toleranced(string key, string example, params ImmutableArray<string> kinds) =>
        Sized(key, example, Read(key, example, QuantityReader.Toleranced, t => t.Target.Unit, kinds), t => t.Target.Number);

    public Located<QuantityRange>? Range(string key, string example, params ImmutableArray<string> kinds) =>
        Read(key, example, QuantityReader.Range, r => r.Unit, kinds);

    /// <summary><c>75 %</c> is 0.75.</summary>
    public Located<decimal>? Share(string key, string example) => Read(key, example, QuantityReader.Share, _ => null, []);

    /// <summary><c>20 to 100 %</c> is 0.20 and 1.00.</summary>
    public (decimal Low, decimal High)? Shares(string key, string example)
    {
        if (Range(key, example, "share") is not { } range)
            return null;
        if (range.Value is { Low: { } low, High: { } high })
            return (low.Value.Number / 100, high.Value.Number / 100);
        WrongKind(_map.Find(key)!, $"`{range.At.Text}`", "a range with two ends", example);
        return null;
    }

    /// <summary>A number without a unit: a factor such as K.</summary>
    public Located<decimal>? Number(string key, string example)
    {
        if (Entry(key) is not { } entry || TextOf(entry, "a number", example) is not { } text)
            return null;
        if (text.Value.Length <= 20 && decimal.TryParse(text.Value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) && number > 0)
            return text.As(number);
        WrongKind(entry, $"`{Say.Short(text.Value)}`", "a number above zero, without a unit,", example);
        return null;
    }

    public ImmutableArray<Located<Quantity>> Quantities(string key, string example, params ImmutableArray<string> kinds) =>
        [.. List(key, $"[{example}]").Select(text => Parse(text, $"`{key}` of {What}", example, QuantityReader.Quantity, q => q.Unit, kinds)).OfType<Located<Quantity>>()];

    /// <summary>A quantity that is itself a key, as the radius in a crane's chart.</summary>
    public Located<Quantity>? KeyAsQuantity(Located<string> key, string example, string kind) =>
        Parse(key, $"A key of {What}", example, QuantityReader.Quantity, q => q.Unit, [kind]);

    private Located<T>? Sized<T>(string key, string example, Located<T>? read, Func<T, decimal> number)
        where T : struct
    {
        if (read is not { } found || number(found.Value) > 0 || (number(found.Value) == 0 && MayBeZero.Contains(key)))
            return read;
        WrongKind(_map.Find(key)!, $"`{Say.Short(found.At.Text)}`", MayBeZero.Contains(key) ? "nothing below zero" : "a size above zero", example);
        return null;
    }

    private Located<T>? Read<T>(string key, string example, Func<string, Parsed<T>> read, Func<T, Unit?> unitOf, ImmutableArray<string> kinds)
        where T : struct =>
        Entry(key) is { } entry && TextOf(entry, kinds is [var only] ? $"a quantity ({only})" : "a quantity", example) is { } text
            ? Parse(text, $"`{key}` of {What}", example, read, unitOf, kinds)
            : null;

    private Located<T>? Parse<T>(Located<string> text, string whose, string example, Func<string, Parsed<T>> read, Func<T, Unit?> unitOf, ImmutableArray<string> kinds)
        where T : struct
    {
        var parsed = read(text.Value);
        if (parsed.Fault is { } fault)
        {
            Findings.Add(QuantityFindings.Of(text, fault, whose, example));
            return null;
        }
        if (unitOf(parsed.Value) is { } unit && !kinds.IsEmpty && !kinds.Contains(unit.Kind))
        {
            Findings.Add(QuantityFindings.WrongKind(text, unit, whose, kinds, example));
            return null;
        }
        return text.As(parsed.Value);
    }
}
