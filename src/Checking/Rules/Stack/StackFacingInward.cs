using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Stack;

/// <summary>The faced side of an end part looks into the stack.</summary>
public sealed class StackFacingInward : ISheetRule
{
    public static RuleInfo Info { get; } = new("stack-facing-inward", "Stack", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var ladder in Ladder.Of(machine))
        {
            // both ends need a name, or "inward" has no meaning
            if (ladder.Stack.From is not { } from || ladder.Stack.To is not { } to || ladder.Rungs.Length < 2)
                continue;
            CheckEnd(ladder, ladder.Rungs[0], from.Value, to.Value, findings);
            CheckEnd(ladder, ladder.Rungs[^1], to.Value, from.Value, findings);
        }
    }

    private static void CheckEnd(Ladder ladder, Rung end, string near, string far, FindingList findings)
    {
        // an end that says nothing, or names no end of this stack, is another fault
        if (end.Piece.FacedTo is not { } faced || faced.Value != far)
            return;
        findings.Add(
            Info,
            faced.At,
            $"The faced side of {end.Name}, position {end.Number}, looks toward the {far}, into the {ladder.Stack.Id.Spoken()}; the part lies at the {near}.",
            "The facing then runs against the turning disc and is ground off. With it gone the piston travels further, leaves its seal bore and leaks inside.",
            $"Turn it round: `{end.Piece.Part.Value}, faced side to {near}`.");
    }
}
