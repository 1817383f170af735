using System.Text.RegularExpressions;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Reading.Faults;
using Witnessmark.Reading.Shapes;

namespace Witnessmark.Reading.Sheets;

/// <summary>Serial numbers that a sheet or a procedure is for: <c>from 0200</c>, <c>from 0200 to 0999</c>.</summary>
internal static partial class SerialsReader
{
    private const string Pattern = "^from +(?<from>[0-9]{1,20})( +to +(?<to>[0-9]{1,20}))?$";

    public static readonly SpelledForm Form = new("serial numbers", () => Pattern);

    public static Located<SerialRange>? Read(Located<string> text, FindingList findings)
    {
        var match = Shape().Match(text.Value);
        if (!match.Success)
            return Refuse(DataFaults.ValueWrongKind, text, findings, $"`{Say.Short(text.Value)}` is not a range of serial numbers.");
        var range = new SerialRange(match.Groups["from"].Value, match.Groups["to"] is { Success: true } to ? to.Value : null);
        return range.To is not null && SerialRange.Compare(range.From, range.To) > 0
            ? Refuse(DataFaults.RangeBackward, text, findings, $"No serial number is in `{Say.Short(text.Value)}`.")
            : text.As(range);
    }

    private static Located<SerialRange>? Refuse(RuleInfo rule, Located<string> text, FindingList findings, string found)
    {
        findings.Add(rule, text.At, found, "A machine outside the range may have other parts under the same cover.", "Write `from 0200`, or `from 0200 to 0999`.");
        return null;
    }

    [GeneratedRegex(Pattern)]
    private static partial Regex Shape();
}
