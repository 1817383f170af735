using Witnessmark.Checking.Work;
using Witnessmark.Engineering;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Fluids;

/// <summary>What is drained would fill its container further than the house allows.</summary>
public sealed class ContainerTooSmall : IProcedureRule
{
    public static RuleInfo Info { get; } = new("container-too-small", "Fluids", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        var fill = scope.Library.Workshop.Limits.ContainerFill;
        foreach (var draining in Draining.In(scope))
        {
            // one of the two volumes is missing
            if (draining is not { Space.Holds: { Value.Unit.Kind: "volume" } holds, Container.Volume: { Value.Unit.Kind: "volume" } volume })
                continue;
            var may = volume.Value with { Number = volume.Value.Number * fill };
            // room enough
            if (holds.Value.CompareTo(may) <= 0)
                continue;
            findings.Add(new Finding(
                Info,
                draining.Drain.At,
                $"{Say.Step(draining.Place)} drains {Measures.InBoth(holds.Value)} into {draining.Container.Id.Value}, which may be filled to {Measures.InBoth(may.ToFigures(3))}.",
                "A container that is full to the brim is carried across rough ground, and its oil is on hands, boots and soil.",
                "Take a larger container, or a second one, and say so in the tool list.")
            {
                Further = [new FurtherPlace(holds.At, "what the space holds"), new FurtherPlace(volume.At, "what the container takes")],
                Worked = [$"{volume.Value.NumberText} × {Figures.Percent(fill)} = {may.ToFigures(3)}"],
            });
        }
    }
}
