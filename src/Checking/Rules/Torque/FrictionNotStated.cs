using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Torque;

/// <summary>A torque stands there without the state of the threads or the nut factor it was worked out for.</summary>
public sealed class FrictionNotStated : ISheetRule
{
    public static RuleInfo Info { get; } = new("friction-not-stated", "Torque", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var group in machine.Fasteners)
        {
            // no torque to hold against anything
            if (group.Torque is not { } torque)
                continue;
            // without a class, as for plugs and fittings, the torque comes from a table and not from friction
            if (group.Thread is null || group.Strength is null)
                continue;
            // both are there
            if (group.Condition is not null && group.NutFactor is not null)
                continue;
            findings.Add(
                Info,
                torque.At,
                $"{group.Id.Value} get {torque.Value}, but {Missing(group)} not stated.",
                "Nine tenths of a torque go into friction. The same torque on oiled threads pulls a bolt a fifth to a third further than on dry ones.",
                PutRight(group),
                new FurtherPlace(group.Id.At, "the group"));
        }
    }

    private static string Missing(FastenerGroup group) => (group.Condition, group.NutFactor) switch
    {
        (null, null) => "whether the threads are dry or oiled, and the nut factor k, are",
        (null, _) => "whether the threads are dry or oiled is",
        _ => "the nut factor k is",
    };

    private static string PutRight(FastenerGroup group) => (group.Condition, group.NutFactor) switch
    {
        ({ } condition, null) when UsualFriction.Of(condition.Value) is { } usual =>
            $"Write the k that the torque was worked out with; for {condition.Value} threads {usual.Text} is usual.",
        ({ }, null) => "Write the k that the torque was worked out with, as `k: 0.15`.",
        _ => "Write both as the maker gives them: `condition: oiled` and `k: 0.15`.",
    };
}
