using System.Collections.Immutable;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Work;

/// <summary>A step and the fact of it that meets a hazard.</summary>
internal readonly record struct Meeting(StepInPlace Place, Fact Fact);

/// <summary>What a message reaches: the steps from it to the end of its section.</summary>
/// <param name="Reached">Steps in reach that meet its hazard.</param>
/// <param name="Missed">Steps just before that met the hazard with no message in force.</param>
/// <param name="Performs">A step in reach performs another procedure, whose steps may meet the hazard.</param>
internal sealed record MessageReach(
    SafetyMessage Message,
    Hazard Hazard,
    ImmutableArray<Meeting> Reached,
    ImmutableArray<Meeting> Missed,
    bool Performs)
{
    public bool IsLate => Reached.IsEmpty && !Missed.IsEmpty;

    private static readonly Once<Scope, ImmutableArray<MessageReach>> InScope = new(s => [.. Find(s)]);

    /// <summary>Messages whose hazard says what work meets it.</summary>
    public static ImmutableArray<MessageReach> Of(Scope scope) => InScope.Of(scope);

    private static IEnumerable<MessageReach> Find(Scope scope)
    {
        foreach (var part in scope.Procedure.Parts)
        {
            var steps = scope.Procedure.Walk().RemoveAll(s => !ReferenceEquals(s.Part, part));
            for (var i = 0; i < steps.Length; i++)
            {
                var isFirst = i == 0 || !ReferenceEquals(steps[i - 1].Section, steps[i].Section);
                foreach (var message in isFirst ? steps[i].MessagesInForce : steps[i].Step.Messages)
                    if (Declared(scope, message) is { MetBy.IsEmpty: false } hazard)
                        yield return Of(scope, message, hazard, steps, i, steps[i].Section.Messages.Contains(message));
            }
        }
    }

    private static MessageReach Of(
        Scope scope, SafetyMessage message, Hazard hazard, ImmutableArray<StepInPlace> steps, int at, bool beforeHeading)
    {
        var section = steps[at].Section;
        var reached = steps.Skip(at).TakeWhile(s => ReferenceEquals(s.Section, section)).ToList();
        // a message behind the last step of a section stands before the next heading
        var back = beforeHeading && at > 0 ? steps[at - 1].Section : section;
        var missed = steps.Take(at).Where(s => ReferenceEquals(s.Section, back) && !s.Warns(hazard));
        var performs = reached.Any(s => s.Step.Find(FactWord.Perform) is not null);
        return new MessageReach(message, hazard, Meetings(scope, reached, hazard), Meetings(scope, missed, hazard), performs);
    }

    private static Hazard? Declared(Scope scope, SafetyMessage message) => message.Hazard is { } name ? scope.Hazard(name.Value) : null;

    private static ImmutableArray<Meeting> Meetings(Scope scope, IEnumerable<StepInPlace> steps, Hazard hazard) =>
    [
        .. steps.Select(s => (Place: s, Fact: HazardWork.In(scope, s.Step, hazard)))
            .Where(m => m.Fact is not null)
            .Select(m => new Meeting(m.Place, m.Fact!)),
    ];
}

internal static class HazardWork
{
    private static readonly Once<Scope, ImmutableArray<(Hazard Hazard, Meeting Meeting)>> InScope = new(s => [.. Find(s)]);

    /// <summary>Every step that meets a hazard, hazard by hazard.</summary>
    public static ImmutableArray<(Hazard Hazard, Meeting Meeting)> HazardsMet(this Scope scope) => InScope.Of(scope);

    public static bool Warns(this StepInPlace place, Hazard hazard) => place.MessagesInForce.Any(m => m.Hazard?.Value == hazard.Id.Value);

    /// <summary>The fact by which a step meets a hazard, or null.</summary>
    public static Fact? In(Scope scope, Step step, Hazard hazard)
    {
        foreach (var fact in step.Facts)
            foreach (var work in hazard.MetBy)
                if (Does(scope, fact, work.Value))
                    return fact;
        return null;
    }

    private static IEnumerable<(Hazard Hazard, Meeting Meeting)> Find(Scope scope)
    {
        // most steps do nothing that could meet any
        var working = scope.Procedure.Walk().RemoveAll(p => !DoesAnything(p.Step));
        foreach (var hazard in scope.Procedure.Hazards.Concat(scope.Machine?.Hazards ?? Items<Hazard>.None).Where(h => !h.MetBy.IsEmpty).DistinctBy(h => h.Id.Value))
            foreach (var place in working)
                if (In(scope, place.Step, hazard) is { } work)
                    yield return (hazard, new Meeting(place, work));
    }

    private static bool DoesAnything(Step step)
    {
        foreach (var fact in step.Facts)
            if (fact.Word == FactWord.Perform || fact.HandlesAnything())
                return true;
        return false;
    }

    private static bool Does(Scope scope, Fact fact, MeetingWork work)
    {
        // a common part that is given the group does the tightening
        if (fact.Value is PerformValue perform)
            return work.Verb == FactWord.Tighten && perform.Arguments.Select(a => a.Value.Value).Contains(work.Thing.Value);
        return fact.Word == work.Verb && fact.Handles(work.Thing.Value, scope);
    }
}
