using Witnessmark.Checking.Work;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Fluids;

/// <summary>A container takes used oil and is not labelled so.</summary>
public sealed class ContainerUnlabelled : IProcedureRule
{
    private const string UsedOil = "used oil";

    public static RuleInfo Info { get; } = new("container-unlabelled", "Fluids", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var draining in Draining.In(scope))
        {
            // no oil
            if (draining.Space.Fluid is not { } fluid || !fluid.Value.Contains("oil", StringComparison.OrdinalIgnoreCase))
                continue;
            // labelled
            if (draining.Container.Wording is { } wording && wording.Value.Contains(UsedOil, StringComparison.OrdinalIgnoreCase))
                continue;
            findings.Add(
                Info,
                draining.Drain.At,
                $"{Say.Step(draining.Place)} drains {fluid.Value} into {draining.Container.Id.Value}, {Label(draining.Container.Wording)}.",
                "A can without a word on it is taken for fresh oil and goes back into a machine. The words Used Oil are also the law where 40 CFR 279.22 holds.",
                $"Put it on the can and into the tool list: `wording: Used Oil - {fluid.Value}`.",
                new FurtherPlace(draining.Container.Id.At, "the container"));
        }
    }

    private static string Label(Located<string>? wording) =>
        wording is { } written ? $"whose label says “{written.Value}” and not “Used Oil”" : "which has no label";
}
