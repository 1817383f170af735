using Witnessmark.Engineering;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;

namespace Witnessmark.Checking.Rules.Torque;

/// <summary>One value is written in two units, and the two are not the same.</summary>
public sealed class UnitsDisagree : ISheetRule
{
    public static RuleInfo Info { get; } = new("units-disagree", "Torque", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        var share = library.Workshop.Limits.DualUnits;
        foreach (var group in machine.Fasteners)
            Check(group.Id, group.Torque, share, findings);
        foreach (var part in machine.Parts)
            Check(part.Id, part.Thickness, share, findings);
        foreach (var stack in machine.Stacks)
            Check(stack.Id, stack.Cavity, share, findings);
    }

    private static void Check(Located<string> id, Located<Toleranced>? value, decimal share, FindingList findings)
    {
        // written in one unit only
        if (value is not { } written || written.Value.Beside is not { } beside)
            return;
        var target = written.Value.Target;
        // a torque beside a length is the reader's to refuse; here the two say the same
        if (!target.Unit.SameKindAs(beside.Unit) || DualUnits.Agree(target, beside, share))
            return;
        findings.Add(
            Info,
            written.At,
            $"{target} and {beside} stand for one value of {id.Value}; {Apart(target, beside)}.",
            "One of the two is wrong, and which one is used depends on the scale of the wrench or gauge in the hand.",
            DualUnits.Beside(target) is { } right
                ? $"{target} is {right}. Leave the second one out: it is worked out and printed beside the first."
                : "Leave the second one out: it is worked out and printed beside the first.");
    }

    private static string Apart(Quantity target, Quantity beside)
    {
        var other = beside.In(target.Unit);
        var off = target.Number == 0 ? 0 : Math.Abs(other.Number - target.Number) / Math.Abs(target.Number);
        return $"{beside} is {other.ToFigures(3)}, {Figures.Percent(off)} {(other.Number > target.Number ? "more" : "less")}";
    }
}
