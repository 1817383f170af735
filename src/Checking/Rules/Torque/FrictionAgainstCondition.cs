using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Torque;

/// <summary>A nut factor is not the usual one for the state that the threads are said to be in.</summary>
public sealed class FrictionAgainstCondition : ISheetRule
{
    public static RuleInfo Info { get; } = new("friction-against-condition", "Torque", Severity.Query);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var group in machine.Fasteners)
        {
            // both must be there
            if (group.NutFactor is not { } k || group.Condition is not { } condition)
                continue;
            // a state that no handbook row is known for
            if (UsualFriction.Of(condition.Value) is not { } usual)
                continue;
            // as handbooks have it
            if (usual.Contains(k.Value))
                continue;
            var fitting = UsualFriction.All.Where(u => u.Contains(k.Value)).Select(u => u.Condition);
            findings.Add(
                Info,
                k.At,
                $"{group.Id.Value} are {condition.Value}, but k {k.Value} is not usual for that: {usual.Text} is ({UsualFriction.Source}).",
                k.Value > usual.High
                    ? "The torque was worked out for threads that drag more. On these it pulls the bolts further than meant, perhaps past proof."
                    : "The torque was worked out for threads that drag less. On these it pulls the bolts less than meant, and they work loose.",
                (fitting.Any()
                    ? $"k {k.Value} is usual for {Say.Or(fitting)} threads. Write that state, or the k for {condition.Value} ones."
                    : $"Write the k for {condition.Value} threads.") + " A k from a test of this joint stays; name the test under `basis`.",
                new FurtherPlace(condition.At, condition.Value));
        }
    }
}
