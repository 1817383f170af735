using System.Collections.Immutable;
using System.Globalization;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Steps;

/// <summary>The number in the file is not the one that prints.</summary>
public sealed class StepNumberWrong : IProcedureRule
{
    public static RuleInfo Info { get; } = new("step-number-wrong", "Steps", Severity.Query);

    public static void Check(Scope scope, FindingList findings)
    {
        var off = 0;
        ImmutableArray<Step> steps = [.. scope.Procedure.Steps];
        foreach (var step in steps)
        {
            var before = off;
            off = step.WrittenNumber.Value - step.Number;
            // right, or only carried on from a wrong one
            if (off == 0 || off == before)
                continue;
            findings.Add(new Finding(
                Info,
                step.WrittenNumber.At,
                $"You wrote {step.WrittenNumber.Value}; it prints as {step.Number}.",
                "Step numbers run through the whole sheet. Who calls a number over the radio, or signs for one, means the printed one.",
                $"Write {step.Number} and count on from there. The names of the steps stay as they are.")
            {
                Correction = CountedOn([.. steps.Skip(step.Number - 1).TakeWhile(s => s.WrittenNumber.Value - s.Number == off)]),
            });
        }
    }

    /// <summary>The printed numbers of steps that are off by the same; null where a number would push out what belongs to its step.</summary>
    private static Correction? CountedOn(ImmutableArray<Step> run) => run.All(HasRoom)
        ? new Correction(
            [.. run.Select(s => new Replacement(s.WrittenNumber.At, s.Number.ToString(CultureInfo.InvariantCulture)))],
            run is [var one] ? $"Step {one.WrittenNumber} becomes {one.Number}." : $"Steps {run[0].WrittenNumber} to {run[^1].WrittenNumber} become {run[0].Number} to {run[^1].Number}.")
        : null;

    /// <summary>What belongs to a step stands behind its number, and less than four blanks further in: else it is text as typed.</summary>
    private static bool HasRoom(Step step)
    {
        const int SignAndBlank = 2;
        var begins = step.WrittenNumber.At.Start.Column + step.Number.ToString(CultureInfo.InvariantCulture).Length + SignAndBlank;
        var bullets = step.Facts.Select(f => f.KeyAt).Concat(step.Remarks.Select(r => r[0].At)).Select(at => at.Start.Column - SignAndBlank);
        return bullets.Concat(step.Blocks.Select(b => b.At.Start.Column)).All(column => column >= begins && column < begins + 4);
    }
}
