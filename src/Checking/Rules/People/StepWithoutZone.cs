using Witnessmark.Checking.Work;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.People;

/// <summary>A step meets a hazard that has a place, and does not say where people are.</summary>
public sealed class StepWithoutZone : IProcedureRule
{
    public static RuleInfo Info { get; } = new("step-without-zone", "People", Severity.Query);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var (hazard, (place, work)) in scope.HazardsMet())
        {
            // it can hurt anywhere
            if (hazard.Zone is not { } zone)
                continue;
            // it says where people are
            if (place.Effective(FactWord.Zone) is not null)
                continue;
            findings.Add(
                Info,
                work.At,
                $"{Say.Step(place)} meets {hazard.Id.Value} in the zone {zone.Value}, and does not say where people are.",
                "What may not move while somebody is there can be held against the steps only when they say who is where.",
                $"Add `zone: {zone.Value}` to the step or under its heading, or `zone: none` when nobody is in any zone.",
                new FurtherPlace(zone.At, $"{hazard.Id.Value} is met here"));
        }
    }
}
