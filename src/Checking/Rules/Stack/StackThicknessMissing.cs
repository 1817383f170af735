using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Stack;

/// <summary>A part in a stack has no thickness, so the clearance cannot be proved.</summary>
public sealed class StackThicknessMissing : ISheetRule
{
    public static RuleInfo Info { get; } = new("stack-thickness-missing", "Stack", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var ladder in Ladder.Of(machine))
        {
            // no limits to prove: an order alone needs no heights
            if (ladder.Stack.Cavity is null || ladder.Stack.Clearance is not { } clearance)
                continue;
            foreach (var part in ladder.Parts.Where(p => p.Thickness is null))
                findings.Add(
                    Info,
                    part.Id.At,
                    $"{part.Id.Value} has no thickness, so nobody can prove that the {ladder.Stack.Id.Spoken()} leaves {clearance.Value}.",
                    "The clearance is what is left of the cavity after every part. One part without a thickness leaves the whole sum open.",
                    "Write its thickness as new, with the tolerance: `thickness: 3.20 ± 0.04 mm`.",
                    new FurtherPlace(clearance.At, "the clearance to be proved"));
        }
    }
}
