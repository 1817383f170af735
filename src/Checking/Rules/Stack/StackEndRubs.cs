using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Stack;

/// <summary>A part that turns with the hub lies against the piston or the ring.</summary>
public sealed class StackEndRubs : ISheetRule
{
    public static RuleInfo Info { get; } = new("stack-end-rubs", "Stack", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var ladder in Ladder.Of(machine))
        {
            // a stack without positions has no ends
            if (ladder.Rungs.IsEmpty)
                continue;
            CheckEnd(ladder, ladder.Rungs[0], ladder.Rungs[^1], ladder.FromName, findings);
            // a stack of one part has one end to report
            if (ladder.Rungs.Length > 1)
                CheckEnd(ladder, ladder.Rungs[^1], ladder.Rungs[0], ladder.ToName, findings);
        }
    }

    private static void CheckEnd(Ladder ladder, Rung end, Rung other, string against, FindingList findings)
    {
        // a part with outer teeth stands still, as piston and ring do
        if (!end.TurnsWithHub)
            return;
        var fitting = other.StandsStill ? [other.Piece.Part.Value] : ladder.Parts.Where(p => p.Spline?.Value == "outer").Select(p => p.Id.Value).ToList();
        findings.Add(
            Info,
            end.Piece.Part.At,
            $"{Say.Capital(end.Name)}, position {end.Number} of the {ladder.Stack.Id.Spoken()}, lies against the {against}: it has inner teeth and turns with the hub.",
            $"It would rub straight on the {against}, which is not made to be rubbed on, and wear it away.",
            fitting.Count > 0 ? $"End the stack with a part that has outer teeth: {Say.Or(fitting)}." : "End the stack with a part that has outer teeth.");
    }
}
