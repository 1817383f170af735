using Witnessmark.Checking.Work;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Fluids;

/// <summary>A space is drained into a container of another fluid.</summary>
public sealed class ContainerForOtherFluid : IProcedureRule
{
    public static RuleInfo Info { get; } = new("container-for-other-fluid", "Fluids", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var draining in Draining.In(scope))
        {
            // one of them does not say
            if (draining is not { Space.Fluid: { } fluid, Container.For: { } taken })
                continue;
            // the same
            if (fluid.IsFluid(taken.Value))
                continue;
            findings.Add(
                Info,
                draining.Drain.At,
                $"{Say.Step(draining.Place)} drains {fluid.Value} into {draining.Container.Id.Value}, which is for {taken.Value}.",
                "Once mixed, nobody can tell from the oil what wore or leaked, the carrier may refuse it, and some of it finds its way back into a machine.",
                $"Give {draining.Space.Id.Value} a container of its own under `drains-into`.",
                new FurtherPlace(fluid.At, "what is in the space"),
                new FurtherPlace(taken.At, "what the container is for"));
        }
    }
}
