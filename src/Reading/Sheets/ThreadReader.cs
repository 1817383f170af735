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

/// <summary>A metric thread with its pitch, <c>M16x2</c>, <c>M22x1.5</c>, or an inch thread with its series, <c>5/8-11 UNC</c>.</summary>
internal static partial class ThreadReader
{
    private const string MetricPattern = @"^M(?<d>[0-9]{1,3}(\.[0-9]{1,2})?) ?[x×] ?(?<p>[0-9]{1,2}(\.[0-9]{1,3})?)$";

    private const string InchPattern =
        @"^((?:#|No\. ?)(?<number>[0-9]{1,2})|(?<size>[0-9]{1,2}(?:[ -][0-9]{1,2}/[0-9]{1,2}|/[0-9]{1,2})?))-(?<n>[0-9]{1,2}) ?(?<series>(?:UNC|UNF|UNS|8?UN)(?:-[123][AB])?)$";

    private const int LargestWhole = 6;
    private const string Why = "Stress area, and with it preload and torque, follow from diameter and pitch; the wrong pitch also strips the hole.";

    public static readonly SpelledForm Form = new("thread", () => $"{MetricPattern}|{InchPattern}");

    public static Located<BoltThread>? Read(Located<string> text, FindingList findings)
    {
        if (((BoltThread?)Metric(text.Value) ?? Inch(text.Value)) is not { } thread)
        {
            findings.Add(
                DataFaults.ThreadUnclear,
                text.At,
                $"`{Say.Short(text.Value)}` is not a thread that is read.",
                Why,
                "Write diameter and pitch in millimetres, `M16x2`, or size, threads to the inch and series, `5/8-11 UNC`. Coarse threads too: M16 is M16x2, No. 10 coarse is `#10-24 UNC` in quotes.");
            return null;
        }
        if (thread is InchThread inch && InSeries(inch) is { } right && right != inch.PerInch)
            findings.Add(
                DataFaults.ThreadUnclear,
                text.At,
                $"There is no {inch}: {inch.Size} {inch.Series.Split('-')[0]} has {Say.Number(right)} threads to the inch.",
                Why,
                $"Count the threads on an inch of the bolt, or lay a gauge on it. If there are {Say.Number(inch.PerInch)}, it is no {inch.Series.Split('-')[0]}; a special pitch is `{inch.Size}-{Say.Number(inch.PerInch)} UNS`.");
        return text.As(thread);
    }

    private static MetricThread? Metric(string text)
    {
        var match = MetricShape().Match(text);
        return Millimetres(match.Groups["d"]) is { } diameter && Millimetres(match.Groups["p"]) is { Number: > 0 } pitch && pitch.Number < diameter.Number
            ? new MetricThread(diameter, pitch)
            : null;
    }

    private static InchThread? Inch(string text)
    {
        var match = InchShape().Match(text);
        if (!match.Success)
            return null;
        var size = match.Groups["number"].Success ? $"#{match.Groups["number"].Value}" : match.Groups["size"].Value.Replace(' ', '-');
        var perInch = int.Parse(match.Groups["n"].Value, CultureInfo.InvariantCulture);
        // a core must be left, and a numbered size is in the table or is none
        return Inches(size) is { } d && perInch > 0 && 1m / perInch < d
            ? new InchThread(size, Quantity.Of(d, "in"), perInch, match.Groups["series"].Value)
            : null;
    }

    /// <summary><c>5/8</c>, <c>1-1/8</c>, <c>2</c>, <c>#10</c>; null when it is no size.</summary>
    private static decimal? Inches(string size)
    {
        if (InchSizes.Find(size) is { } known)
            return known.Diameter;
        if (size[0] == '#')
            return null;
        var parts = size.Split('-', '/').Select(p => decimal.Parse(p, NumberStyles.None, CultureInfo.InvariantCulture)).ToArray();
        return parts switch
        {
            // 10-24 is a numbered size without its mark, not a bolt of ten inches
            [<= LargestWhole and var whole] => whole,
            [var over, > 0 and var under] when over < under => over / under,
            [var whole, var over, > 0 and var under] when over < under => whole + (over / under),
            _ => null,
        };
    }

    /// <summary>What the series prescribes for a size; null for a series without one pitch a size, and where the table ends.</summary>
    private static int? InSeries(InchThread thread) => InchSizes.Find(thread.Size) is not { } size ? null : thread.Series.Split('-')[0] switch
    {
        "UNC" => size.Coarse,
        "UNF" => size.Fine,
        "8UN" => 8,
        _ => null,
    };

    private static Quantity? Millimetres(Group number) =>
        number.Success ? Quantity.Of(decimal.Parse(number.Value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture), "mm") : null;

    [GeneratedRegex(MetricPattern)]
    private static partial Regex MetricShape();

    [GeneratedRegex(InchPattern)]
    private static partial Regex InchShape();
}
