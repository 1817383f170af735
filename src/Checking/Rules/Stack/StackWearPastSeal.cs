using Witnessmark.Engineering.Stacks;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Stack;

/// <summary>With every part just above its own wear limit the piston leaves its seal bore.</summary>
public sealed class StackWearPastSeal : ISheetRule
{
    public static RuleInfo Info { get; } = new("stack-wear-past-seal", "Stack", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var stack in machine.Stacks)
        {
            // no seal overrun, or a part without a thickness
            if (stack.SealOverrun is not { } overrun || WearTravel.Of(stack, machine.Parts.Find) is not { } wear)
                continue;
            // the seal still holds at the end of life
            if (wear.Fits)
                continue;
            findings.Add(new Finding(
                Info,
                overrun.At,
                $"With every part of the {stack.Id.Spoken()} worn to its limit the piston travels {Measures.InBoth(wear.Travel.Value)}; the seal allows {Measures.InBoth(wear.Allowed.Value)}.",
                "Every part measures good, and still the piston leaves its seal bore: oil leaks inside and brake pressure is lost.",
                "Raise the wear limits until the sum fits, or give the stack a limit of its own. Look the seal overrun up again.")
            {
                Further = [.. Limits(machine, stack).Select(l => new FurtherPlace(l.At, $"worn at {l.Value}"))],
                Worked = [$"travel: {wear.Travel.Line}", $"allowed: {wear.Allowed.Line}"],
            });
        }
    }

    private static IEnumerable<Located<Quantity>> Limits(Machine machine, PartStack stack) => machine.Parts
        .Where(p => stack.Order.Any(r => r.Pieces.Any(piece => piece.Part.Value == p.Id.Value)))
        .Select(p => p.WornAt)
        .OfType<Located<Quantity>>();
}
