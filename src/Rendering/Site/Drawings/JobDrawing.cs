using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Wording;
using Witnessmark.Proof;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Figures;

namespace Witnessmark.Rendering.Site.Drawings;

/// <summary>The flow of a job: its own steps, with what each performs taken together.</summary>
internal static class JobDrawing
{
    public static Drawing? Of(SheetPlan plan, string id, Words words)
    {
        var steps = plan.Sections.SelectMany(s => s.Steps).ToList();
        if (steps.Count == 0)
            return null;
        var kinds = steps.SelectMany(In).Distinct().ToList();
        var points = SafeStops.Of(plan.Scope, plan.Part).Where(p => p.IsSafe).Select(p => p.Place.Step).ToHashSet(ReferenceEqualityComparer.Instance);
        var sections = plan.Sections.Select(s => new FlowSection(s.Section.Heading?.Value ?? "", [.. s.Steps.Select(step => One(step, kinds, points.Contains(step.Step)))]));
        return new Drawing(JobFlow.Draw(id, new Flow([.. kinds.Select(k => DeclaredName.Spoken(k.Id.Value))], [.. sections]), words), words.JobInOrder);
    }

    private static FlowStep One(SheetStep step, List<DeviceKind> kinds, bool mayBeLeft)
    {
        var performed = string.Join("; ", step.Step.All(FactWord.Perform).Select(f => f.Value).OfType<PerformValue>().Select(p => p.Part is { } part ? $"{p.Procedure}, {part}" : p.Procedure.Value));
        var inside = In(step).ToHashSet();
        return new FlowStep(step.Code.Plain, step.Fills.In(step.Step.Name.Value), performed, Minutes(step), mayBeLeft, [.. kinds.Select(inside.Contains)]);
    }

    /// <summary>What is in the machine when the step is done with all that it performs.</summary>
    private static IEnumerable<DeviceKind> In(SheetStep step) => (step.Performed is [.., var last] ? last : step).LeavesIn.Select(s => s.Kind);

    // the longer end of each: a plan that is too short hurries people
    private static decimal? Minutes(SheetStep step)
    {
        var times = step.Performed.Prepend(step).Select(s => s.Step.Value<Duration>(FactWord.Time)?.Range).Select(r => (r?.High ?? r?.Low)?.Value.In(UnitTable.Get("min")).Number).OfType<decimal>().ToList();
        return times.Count == 0 ? null : times.Sum();
    }
}
