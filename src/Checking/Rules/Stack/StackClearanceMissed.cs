using Witnessmark.Engineering.Stacks;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Stack;

/// <summary>Parts as drawn do not leave the clearance that is accepted.</summary>
public sealed class StackClearanceMissed : ISheetRule
{
    public static RuleInfo Info { get; } = new("stack-clearance-missed", "Stack", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var stack in machine.Stacks)
        {
            // no limit, or a part without a thickness: that is a fault of its own
            if (stack.Clearance is not { Value.Unit.Kind: "length" } accepted || StackHeight.Of(stack, machine.Parts.Find) is not { } height)
                continue;
            var clearance = height.Clearance.Value;
            // as drawn, the stack leaves what is accepted
            if (accepted.Value.Contains(clearance))
                continue;
            findings.Add(new Finding(
                Info,
                accepted.At,
                $"The {stack.Id.Spoken()} as drawn leaves {Measures.InBoth(clearance)}; {Measures.InBoth(accepted.Value)} is accepted.",
                "With too little the brake drags and burns, with too much the piston travels past its seal. Good new parts would be refused, or a number in the sheet is wrong.",
                "Look up cavity, order, thicknesses and the accepted clearance again: one of them belongs to another build.")
            {
                Further = [new FurtherPlace(stack.Cavity!.Value.At, $"the cavity: {stack.Cavity.Value.Value}")],
                Worked = [$"height: {height.Height.Line}", $"clearance: {height.Clearance.Line}"],
            });
        }
    }
}
