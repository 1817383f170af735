using System.Collections.Immutable;
using Scriban.Runtime;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Wording;

namespace Witnessmark.Rendering.Checklist.InWords;

/// <summary>Numbers as they are printed: the native unit large, the other one small beside it.</summary>
internal sealed record QuantityWords(Words Words)
{
    public ScriptObject Of(QuantityRange range, string label = "", bool difference = false) =>
        Pair(Text(range), DualUnits.Beside(range, difference) is { } beside ? Text(beside) : "", label);

    public ScriptObject Of(Quantity quantity, string label = "") =>
        Pair(quantity.ToString(), DualUnits.Beside(quantity)?.ToString() ?? "", label);

    public ScriptObject Of(Toleranced value, string label = "") =>
        Pair(value.ToString(), (value.Beside is { } written ? new Toleranced(written, null) : DualUnits.Beside(value))?.ToString() ?? "", label);

    /// <summary><c>43 kg (95 lb)</c>, not broken between number and unit.</summary>
    public static string Both(Quantity quantity) =>
        Measures.InBoth(quantity).Replace(' ', '\u00A0');

    public string Text(QuantityRange range) => (range.Low, range.High) switch
    {
        ({ } l, { } h) when l.Inclusive && h.Inclusive && l.Value.CompareTo(h.Value) == 0 => l.Value.ToString(),
        ({ } l, { } h) => $"{(l.Inclusive ? "" : Words.Above + " ")}{l.Value.NumberText} {Words.To} {(h.Inclusive ? "" : Words.Below + " ")}{h.Value}",
        ({ } l, null) => $"{(l.Inclusive ? Words.From : Words.Above)} {l.Value}",
        (null, { } h) => $"{(h.Inclusive ? Words.UpTo : Words.Below)} {h.Value}",
        _ => "",
    };

    /// <summary>Least and most of several durations together; empty when there are none.</summary>
    public string Sum(ImmutableArray<QuantityRange> durations)
    {
        if (durations.IsEmpty)
            return "";
        var minutes = UnitTable.Get("min");
        var low = durations.Sum(d => (d.Low ?? d.High)!.Value.Value.In(minutes).Number);
        var high = durations.Sum(d => (d.High ?? d.Low)!.Value.Value.In(minutes).Number);
        return Text(QuantityRange.Between(new Quantity(decimal.Round(low), minutes), new Quantity(decimal.Round(high), minutes)));
    }

    private static ScriptObject Pair(string native, string beside, string label) =>
        new() { ["native"] = native, ["beside"] = beside, ["label"] = label };
}
