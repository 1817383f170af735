using System.Globalization;
using System.Text.RegularExpressions;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Wording;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>The ladder was not struck to the end, or not in order.</summary>
public sealed partial class StackDiffers : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Fault("stack-differs");

    public static void Check(Held held, FindingList findings)
    {
        foreach (var answer in held.Answers<StackAsk>())
        {
            if (Typed.Text(answer.Value)?.Value is not { } written || InOrder(written) == answer.Ask.Cells.Length)
                continue;
            findings.Add(
                Info,
                answer.Value.At,
                Say.Capital($"{DeclaredName.Spoken(answer.Ask.Key)} is written as {written}; the sheet has {answer.Ask.Cells.Length} positions."),
                "Two discs or two plates side by side, or one left out, cannot be seen once the stack is closed.",
                $"Look at the ladder on the paper: every cell struck in turn is {answer.Ask.Cells.Length} in order. If a cell is open, take the stack down to it.");
        }
    }

    private static int? InOrder(string written) =>
        Shape().Match(written) is { Success: true } m ? int.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture) : null;

    [GeneratedRegex("^([0-9]{1,4}) in order$")]
    private static partial Regex Shape();
}
