using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Figures;

namespace Witnessmark.Rendering.Site.Drawings;

/// <summary>Roles and times of a part's steps, performed ones among them; nothing when no step has a time.</summary>
internal static class CrewDrawing
{
    public static Drawing? Of(SheetPlan plan, string id, Words words)
    {
        var steps = plan.Steps.Where(s => s.Performed.IsEmpty || MinutesOf(s) is not null).ToList();
        var roles = plan.Procedure.Crew.Select(c => c.Role.Value).Concat(steps.SelectMany(RolesOf)).Distinct(StringComparer.Ordinal).ToList();
        if (roles.Count == 0 || steps.All(s => MinutesOf(s) is null or 0))
            return null;
        var crew = new CrewTimes([.. roles], [.. steps.Select(s => One(s, roles))]);
        return new Drawing(CrewBars.Draw(id, crew, words), words.WhoWorksWhen);
    }

    private static CrewStep One(SheetStep step, List<string> roles)
    {
        var checker = step.Step.Value<Checker>(FactWord.CheckedBy)?.Role.Value;
        return new CrewStep(
            step.Code.Plain,
            step.Fills.In(step.Step.Name.Value),
            MinutesOf(step),
            [.. step.Place.Doers.Select(d => roles.IndexOf(d))],
            checker is null ? null : roles.IndexOf(checker));
    }

    private static IEnumerable<string> RolesOf(SheetStep step) =>
        step.Place.Doers.Concat(step.Step.Value<Checker>(FactWord.CheckedBy) is { } checker ? [checker.Role.Value] : []);

    // the longer end of the range: a plan that is too short hurries people
    private static decimal? MinutesOf(SheetStep step) =>
        step.Step.Value<Duration>(FactWord.Time)?.Range is { } range && (range.High ?? range.Low) is { } end ? end.Value.In(UnitTable.Get("min")).Number : null;
}
