using System.Globalization;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Wording;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>A hold point whose values do not let the work go on.</summary>
public sealed class HoldNotPassed : IReason
{
    private const string Passed = "passed";

    public static RuleInfo Info { get; } = ReasonInfo.Fault("hold-not-passed");

    public static void Check(Held held, FindingList findings)
    {
        foreach (var answer in held.Answers<HoldAsk>())
        {
            if (Typed.Text(answer.Value) is not { } text || Wrong(held, answer, text.Value) is not { } wrong)
                continue;
            findings.Add(
                Info,
                text.At,
                $"The hold point of {answer.Entry.Says} is not passed: {wrong}.",
                "Work stops at a hold point until its words are true, because afterwards nobody can look any more.",
                $"Make it true on the machine: {string.Join("___", answer.Ask.Words).Trim()}. Then the {answer.Ask.By ?? "mechanic"} looks and it is written anew.");
        }
    }

    private static string? Wrong(Held held, Answer<HoldAsk> answer, string written)
    {
        if (answer.Ask.Blanks == 0)
            return written == Passed ? null : $"it says {written}, not {Passed}";
        var values = written.Split(',', StringSplitOptions.TrimEntries);
        if (values.Length != answer.Ask.Blanks || values.Any(v => v.Length == 0))
            return $"it has {Say.Count(answer.Ask.Blanks, "blank")} and {Say.Count(values.Count(v => v.Length > 0), "value")}";
        return values.Select((v, i) => Counted(answer, v, i) ?? Torqued(held, answer, v, i)).FirstOrDefault(w => w is not null);
    }

    /// <summary>A blank behind the name of something that the same step counts.</summary>
    private static string? Counted(Answer<HoldAsk> answer, string value, int blank)
    {
        var before = answer.Ask.Words[blank].TrimEnd();
        var count = answer.Entry.Asked.Step.Asks.OfType<CountAsk>().FirstOrDefault(c => before.EndsWith(DeclaredName.Spoken(c.Key), StringComparison.OrdinalIgnoreCase));
        if (count is null || (int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out var n) && (count.AtLeast ? n >= count.Expected : n == count.Expected)))
            return null;
        return $"{DeclaredName.Spoken(count.Key)} is {value}, it must be {count.Expected}";
    }

    /// <summary>A blank before a unit of torque: what the wrench read is what the last pass dials.</summary>
    private static string? Torqued(Held held, Answer<HoldAsk> answer, string value, int blank)
    {
        if (UnitTable.Find(answer.Ask.Words[blank + 1].Trim()) is not { Kind: "torque" } unit)
            return null;
        var number = answer.Entry.Asked.Step.Code.Number;
        var passes = held.Asked.Where(a => a.Step.Code.Number == number).SelectMany(a => a.Step.Asks).OfType<PassAsk>().LastOrDefault();
        if (passes is not { Settings: [.., var last] } || last.Dial.Unit != unit)
            return null;
        var read = QuantityReader.Quantity(value.Any(char.IsLetter) ? value : $"{value} {unit}");
        if (!read.Ok || !read.Value.Unit.SameKindAs(unit))
            return $"{value} is no torque";
        if (read.Value.CompareTo(last.Dial) == 0)
            return null;
        var otherScale = DualUnits.Beside(last.Dial) is { } beside && beside.Number == read.Value.Number ? $" ({beside} is the same: was it read on the other scale?)" : "";
        return $"the wrench read {read.Value}, the last pass is dialled {last.Dial}{otherScale}";
    }
}
