using Witnessmark.Engineering;
using Witnessmark.Engineering.Stacks;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Stack;

/// <summary>Good parts, as they usually come together, can miss the clearance that is accepted.</summary>
public sealed class StackClearanceTight : ISheetRule
{
    public static RuleInfo Info { get; } = new("stack-clearance-tight", "Stack", Severity.Query);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var stack in machine.Stacks)
        {
            // no limit, or a part without a thickness
            if (stack.Clearance is not { Value.Unit.Kind: "length" } accepted || StackHeight.Of(stack, machine.Parts.Find) is not { } height)
                continue;
            // already missed as drawn: the nearer cause
            if (!accepted.Value.Contains(height.Clearance.Value))
                continue;
            var usual = Around(height.Clearance.Value, height.RootSumSquare.Value);
            // what usually comes together is accepted
            if (Holds(accepted.Value, usual))
                continue;
            findings.Add(Of(stack, accepted, usual, height));
        }
    }

    private static Finding Of(PartStack stack, Located<QuantityRange> accepted, QuantityRange usual, StackHeight height) => new(
        Info,
        accepted.At,
        $"Good parts of the {stack.Id.Spoken()} usually leave {Rounded(usual)}; only {Measures.InBoth(accepted.Value)} is accepted.",
        "Sets with every part inside its own limits would be taken apart again on the job, and someone will start to swap parts until it fits.",
        "Ask the maker for the accepted clearance, or for closer thicknesses. If parts are picked by measuring, say so.")
    {
        Further = [new FurtherPlace(stack.Cavity!.Value.At, $"the cavity: {stack.Cavity.Value.Value}")],
        Worked =
        [
            $"clearance as drawn: {height.Clearance.Line}",
            $"to be expected: {height.RootSumSquare.Line}",
            $"worst case: {height.WorstCase.Line}",
        ],
    };

    private static QuantityRange Around(Quantity middle, Quantity off) =>
        QuantityRange.Between(middle with { Number = middle.Number - off.Number }, middle with { Number = middle.Number + off.Number });

    private static bool Holds(QuantityRange accepted, QuantityRange usual) =>
        accepted.Contains(usual.Low!.Value.Value) && accepted.Contains(usual.High!.Value.Value);

    private static QuantityRange Rounded(QuantityRange range) =>
        QuantityRange.Between(range.Low!.Value.Value.ToFigures(3), range.High!.Value.Value.ToFigures(3));
}
