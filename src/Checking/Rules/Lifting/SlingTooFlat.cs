using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Lifting;

/// <summary>The legs of a sling stand flatter than the house allows.</summary>
public sealed class SlingTooFlat : ISheetRule
{
    public static RuleInfo Info { get; } = new("sling-too-flat", "Lifting", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        var least = library.Workshop.Limits.SlingAngle;
        foreach (var load in machine.Loads)
        {
            // no angle, or steep enough
            if (load.Angle is not { Value: { Unit.Kind: "angle" } angle } || angle.CompareTo(least) >= 0)
                continue;
            findings.Add(
                Info,
                load.Angle.Value.At,
                $"{Say.Capital(load.Id.Value)} hangs in legs at {angle} to the horizontal; the house wants {least} or more.",
                "Flat legs pull far harder than the load weighs, draw the eyes sideways and squeeze what they hold.",
                $"Take longer legs or a spreader, and write the angle that they then have: {least} or steeper.");
        }
    }
}
