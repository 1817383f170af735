using Witnessmark.Language.Findings;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Wording;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>No part of this kind measures so: the number was read, written or typed wrong.</summary>
public sealed class ReadingImpossible : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Fault("reading-impossible");

    private static readonly (decimal Factor, string Says)[] Slips =
    [
        (10, "a decimal point one place too far left"),
        (0.1m, "a decimal point one place too far right"),
        (100, "a decimal point two places too far left"),
        (0.01m, "a decimal point left out"),
        (0.001m, "a decimal point left out"),
    ];

    public static void Check(Held held, FindingList findings)
    {
        foreach (var answer in held.Answers<ReadingAsk>())
        {
            if (answer.Ask.Reading.Plausible?.Value is not { } plausible)
                continue;
            foreach (var row in answer.Sound())
                foreach (var value in row.In(row.Unit!).Where(v => !plausible.Contains(v)).Take(1))
                    findings.Add(
                        Info,
                        row.At,
                        Say.Capital($"{answer.Name(row)}: {value} cannot be; it measures {plausible}."),
                        "A number that no part can have was read in the wrong unit, copied with a slip, or is of another part.",
                        $"{Slip(value, plausible)}Look at the paper; if it says the same, measure that piece again.");
        }
    }

    internal static bool IsPlausible(ReadingAsk ask, Quantity value) => ask.Reading.Plausible?.Value.Contains(value) ?? true;

    /// <summary><c>inches</c>, not <c>in</c>, where a unit has a word.</summary>
    private static string InWords(Unit unit) => unit.Spellings.LastOrDefault(s => s.Length > 4 && s.All(char.IsAsciiLetter)) ?? unit.Symbol;

    /// <summary>What explains it, when something does.</summary>
    private static string Slip(Quantity value, QuantityRange plausible)
    {
        if (UnitTable.BesideOf(value.Unit) is { } other && new Quantity(value.Number, other) is var meant && plausible.Contains(meant))
            return $"{meant} would be {meant.In(value.Unit).RoundedTo(value.Decimals > 2 ? 2 : value.Decimals)}: was it read in {InWords(other)}? ";
        foreach (var (factor, says) in Slips)
            if (value with { Number = value.Number * factor } is var right && plausible.Contains(right))
                return $"{right} would fit: {says}? ";
        return "";
    }
}
