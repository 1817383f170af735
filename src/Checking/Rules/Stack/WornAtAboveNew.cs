using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Stack;

/// <summary>The wear limit is not below the thinnest new part.</summary>
public sealed class WornAtAboveNew : ISheetRule
{
    public static RuleInfo Info { get; } = new("worn-at-above-new", "Stack", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var part in machine.Parts)
        {
            // nothing to compare
            if (part.WornAt is not { } worn || part.Thickness is not { } thickness)
                continue;
            // a length cannot be held against something else: the reader says so
            if (!worn.Value.Unit.SameKindAs(thickness.Value.Target.Unit))
                continue;
            // a new part is always above its limit
            if (worn.Value.CompareTo(thickness.Value.Low) < 0)
                continue;
            findings.Add(
                Info,
                worn.At,
                $"{part.Id.Value} is worn out at {Measures.InBoth(worn.Value)}, but a good new one may be as thin as {thickness.Value.Low}.",
                "New parts out of the box would be scrapped, or the limit is for another part and worn ones stay in.",
                $"Look both numbers up again. A wear limit lies below {thickness.Value.Low}.",
                new FurtherPlace(thickness.At, $"new: {thickness.Value}"));
        }
    }
}
