using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Stack;

/// <summary>A part in a stack does not say where its teeth are.</summary>
public sealed class StackSplineMissing : ISheetRule
{
    public static RuleInfo Info { get; } = new("stack-spline-missing", "Stack", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var ladder in Ladder.Of(machine))
            foreach (var part in ladder.Parts)
            {
                // it says so
                if (part.Spline is not null)
                    continue;
                findings.Add(
                    Info,
                    part.Id.At,
                    $"{part.Id.Value} is in the {ladder.Stack.Id.Spoken()}, but nothing says whether its teeth are inner or outer.",
                    "Discs turn with the hub and plates stand with the housing. Only the teeth show whether the order alternates.",
                    "Write `spline: inner` or `spline: outer`.",
                    new FurtherPlace(ladder.Stack.Id.At, "the stack that it is in"));
            }
    }
}
