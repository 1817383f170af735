using System.Collections.Immutable;
using System.Globalization;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Reading.Data;
using Witnessmark.Reading.Faults;
using Witnessmark.Reading.Shapes;

namespace Witnessmark.Reading.Sheets;

/// <summary>Passes of tightening: <c>30 %, 60 %, 100 %, 100 % circular</c>.</summary>
internal static class PassReader
{
    private const string Circular = " circular";

    private static readonly SpelledForm Form = new("pass", () => $"{QuantityPatterns.Share[..^1]}(?:{Circular})?$");

    public static readonly CountForm Bolt = new(1, 999);

    public static readonly Row Passes = Row.List("passes", "[30 %, 60 %, 100 %, 100 % circular]", "shares of the torque, pass by pass", Form);

    public static ImmutableArray<Located<TorquePass>> Read(Fields fields) =>
        [.. fields.List(Passes.Key).Select(text => One(text, fields)).OfType<Located<TorquePass>>()];

    public static Located<int>? BoltNumber(Located<string> text, Fields fields)
    {
        if (int.TryParse(text.Value, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= Bolt.Least && number <= Bolt.Most)
            return text.As(number);
        fields.Findings.Add(
            DataFaults.ValueWrongKind,
            text.At,
            $"`{Say.Short(text.Value)}` in `sequence` of {fields.What} is not a bolt number.",
            "The order of tightening is printed bolt by bolt.",
            "Write numbers from 1 in the order of tightening: [1, 7, 4, 10].");
        return null;
    }

    private static Located<TorquePass>? One(Located<string> text, Fields fields)
    {
        var circular = text.Value.EndsWith(Circular, StringComparison.Ordinal);
        var share = circular ? text.Value[..^Circular.Length] : text.Value;
        var parsed = QuantityReader.Share(share);
        if (parsed.Fault is { } fault)
            fields.Findings.Add(QuantityFindings.Of(text, fault, $"A pass of {fields.What}", "30 %"));
        else if (parsed.Value is <= 0 or > 1)
            fields.Findings.Add(
                DataFaults.PassImpossible,
                text.At,
                $"A pass of {fields.What} is `{Say.Short(text.Value)}` of the torque.",
                "A pass over 100 % stretches the bolts beyond what the torque was worked out for; one of nothing does nothing.",
                "Write a share above 0 and up to 100 %.");
        else
            return text.As(new TorquePass(parsed.Value, circular));
        return null;
    }
}
