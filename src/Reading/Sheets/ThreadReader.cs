using System.Globalization;
using System.Text.RegularExpressions;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Reading.Faults;
using Witnessmark.Reading.Shapes;

namespace Witnessmark.Reading.Sheets;

/// <summary>A metric thread with its pitch: <c>M16x2</c>, <c>M22x1.5</c>.</summary>
internal static partial class ThreadReader
{
    private const string Pattern = @"^M(?<d>[0-9]{1,3}(\.[0-9]{1,2})?) ?[x×] ?(?<p>[0-9]{1,2}(\.[0-9]{1,3})?)$";

    public static readonly SpelledForm Form = new("thread", () => Pattern);

    public static Located<MetricThread>? Read(Located<string> text, FindingList findings)
    {
        var match = Shape().Match(text.Value);
        if (Millimetres(match.Groups["d"]) is { } diameter && Millimetres(match.Groups["p"]) is { Number: > 0 } pitch && pitch.Number < diameter.Number)
            return text.As(new MetricThread(diameter, pitch));
        findings.Add(
            DataFaults.ThreadUnclear,
            text.At,
            $"`{Say.Short(text.Value)}` is not a thread that is read.",
            "Stress area, and with it preload and torque, follow from diameter and pitch; the wrong pitch also strips the hole.",
            "Write diameter and pitch in millimetres: `M16x2`. Coarse threads too: M16 is M16x2.");
        return null;
    }

    private static Quantity? Millimetres(Group number) =>
        number.Success ? Quantity.Of(decimal.Parse(number.Value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture), "mm") : null;

    [GeneratedRegex(Pattern)]
    private static partial Regex Shape();
}
