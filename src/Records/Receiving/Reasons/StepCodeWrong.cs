using System.Globalization;
using System.Text.RegularExpressions;
using Witnessmark.Language.Findings;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>A digit of the code was typed wrong: number and check digit do not agree.</summary>
public sealed partial class StepCodeWrong : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Fault("step-code-wrong");

    public static void Check(Held held, FindingList findings)
    {
        foreach (var entry in held.SignOff.Entries)
        {
            if (Read(entry.Step.Value) is { } code && code.Code.CheckDigit == code.Check)
                continue;
            var same = held.Asked.Select(a => a.Step.Code).Where(c => c.Plain == entry.Step.Value.Split('/')[0]).Select(c => $"{c}").ToList();
            findings.Add(
                Info,
                entry.Step.At,
                $"{entry.Step.Value} is no step code of this sheet{(same.Count > 0 ? $": that step is printed {same[0]}" : "")}.",
                "A code typed wrong would book the reading of one step on another.",
                "Copy number, stroke and last digit from the paper, where they stand at the beginning of the step.");
        }
    }

    /// <summary>Null when it has not the shape of a code.</summary>
    internal static (StepCode Code, int Check)? Read(string written)
    {
        if (Shape().Match(written) is not { Success: true } m)
            return null;
        int? inner = m.Groups[2].Success ? Number(m.Groups[2].Value) : null;
        return (new StepCode(Number(m.Groups[1].Value), inner), Number(m.Groups[3].Value));
    }

    private static int Number(string digits) => int.Parse(digits, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^([0-9]{1,3})(?:\.([0-9]{1,2}))?/([0-9])$")]
    private static partial Regex Shape();
}
