using System.Collections.Immutable;
using Witnessmark.Language.Model;

namespace Witnessmark.Proof;

/// <summary>
/// Follows a part of a procedure on all its ways at once, step by step in the order of work: sections in turns, work under a condition,
/// work that is done again, endings, and whatever is performed as if it stood there.
/// </summary>
internal sealed class Walk
{
    private const int Deepest = 12;
    private const int MostSteps = 200_000;

    private readonly Proving _proving;
    private readonly Contracts _contracts;
    private readonly Points _points;
    private Moment? _last;
    private int _number;

    private Walk(Scope scope)
    {
        _proving = new Proving(scope);
        _contracts = new Contracts(_proving);
        _points = new Points(_proving);
    }

    private Ways Of => _proving.Ways;

    private Situation Situation => _proving.Situation;

    public static PartProof Prove(Scope scope, ProcedurePart part)
    {
        var walk = new Walk(scope);
        var places = part.Walk(scope.Procedure).ToImmutableArray();
        try
        {
            walk.Follow(places, new Frame(Names.Of(scope), part, null, [], 0), scope.Procedure.IsJob);
            return new PartProof(part, walk._proving.Breaches.Found, walk._points.All, TooManyWays: false);
        }
        catch (TooManyWaysException)
        {
            // what could not be followed is not known to be safe anywhere
            return new PartProof(part, [], [.. places.Select(p => new StopPoint(p, [], walk._proving.Guarding?.AtStops ?? []))], TooManyWays: true);
        }
    }

    private void Follow(ImmutableArray<StepInPlace> places, Frame frame, bool isJob)
    {
        _contracts.Begin(frame);
        Run(places, frame, Ways.Yes);
        if (_last is { } last)
            _contracts.End(frame, isJob, last);
    }

    private void Run(ImmutableArray<StepInPlace> places, Frame frame, int guard)
    {
        for (var i = 0; i < places.Length;)
        {
            var section = places[i].Section;
            var upTo = i;
            while (upTo < places.Length && ReferenceEquals(places[upTo].Section, section))
                upTo++;
            if ((section.Facts.Find(FactWord.ForEach) ?? frame.Part.Facts.Find(FactWord.ForEach))?.Value is Loop loop)
                Turns(loop, section.Facts.Find(FactWord.Until), frame, guard, (turn, on) => Steps(places, i, upTo, turn, on));
            else
                Steps(places, i, upTo, frame, guard);
            i = upTo;
        }
    }

    /// <summary>One turn for each place or number, until what is waited for is so.</summary>
    private void Turns(Loop loop, Fact? until, Frame frame, int guard, Action<Frame, int> turn)
    {
        var kind = loop.Kind.Value;
        ImmutableArray<string> through = !loop.In.IsEmpty ? [.. loop.In.Select(v => v.Value)] : frame.Names.Places(kind) is { IsEmpty: false } places ? places : [""];
        foreach (var place in through)
        {
            var inside = place.Length == 0 ? frame : frame.With(frame.Names.At(kind, place));
            turn(inside, guard);
            frame.Done = inside.Done;
            if (until?.Value is ConditionValue waited)
                guard = Of.And(guard, Of.Not(_proving.Settled(waited.Condition, _proving.Asking(frame.Names), null)));
        }
    }

    private void Steps(ImmutableArray<StepInPlace> places, int from, int to, Frame frame, int guard)
    {
        for (var i = from; i < to; i++)
        {
            var done = Step(places[i], frame, guard);
            if (places[i].Step.Find(FactWord.AgainFrom)?.Value is AgainFrom again)
                Again(again, places, i, frame, done);
        }
    }

    /// <summary>Back to an earlier step, so often, and then it ends.</summary>
    private void Again(AgainFrom again, ImmutableArray<StepInPlace> places, int at, Frame frame, int guard)
    {
        var back = at;
        while (back >= 0 && places[back].Step.Slug != again.Step.Value)
            back--;
        for (var turn = 0; turn < again.AtMost && back >= 0 && guard != Ways.No; turn++)
        {
            for (var i = back; i < at; i++)
                Step(places[i], frame, guard);
            guard = Step(places[at], frame, guard);
        }
        Finish(again.Then, guard, frame);
    }

    /// <returns>The ways on which the step is done.</returns>
    private int Step(StepInPlace place, Frame frame, int guard)
    {
        if (_number > MostSteps)
            throw new TooManyWaysException();
        var at = new Moment(++_number, place, frame.PerformedBy);
        // values on ways that have ended matter to nobody: whoever asks, asks of those on which work goes on
        guard = Of.And(guard, Of.Not(frame.Done));
        if (place.Effective(FactWord.OnlyIf)?.Value is ConditionValue only)
            guard = Of.And(guard, _proving.Settled(only.Condition, _proving.Asking(frame.Names), at));
        if (Of.And(guard, Situation.Alive) != Ways.No)
        {
            _last = at;
            var people = place.Effective(FactWord.Zone)?.Value is NameList zones ? [.. zones.Names.Select(n => n.Value).Where(n => n != "none")] : frame.People;
            if (place.Step.Find(FactWord.ForEach)?.Value is Loop loop)
                Turns(loop, null, frame, guard, (turn, on) => Done(place, turn, new Doing(at, turn.Names, on, people)));
            else
                Done(place, frame, new Doing(at, frame.Names, guard, people));
        }
        if (frame.Depth == 0)
            _points.Add(place, frame);
        return Of.And(guard, Situation.Alive, Of.Not(frame.Done));
    }

    private void Done(StepInPlace place, Frame frame, Doing doing)
    {
        foreach (var needed in place.Step.All(FactWord.Requires).SelectMany(f => f.Conditions))
            _proving.Breaches.Must(BreachKind.Requirement, null, needed, doing.Guard, _proving.Work.Must(doing), doing.Names, doing.At);
        foreach (var rule in doing.People.SelectMany(z => _proving.Guarding?.NeverIn(z) ?? []).Distinct())
            _proving.Breaches.Never(rule, rule.NeverWhen!, doing.Guard, _proving.Work.Ask(doing), doing.At);
        foreach (var fact in place.Step.Facts)
            Fact(fact, place, frame, doing);
        _proving.Work.EndStep(doing);
    }

    private void Fact(Fact fact, StepInPlace place, Frame frame, Doing doing)
    {
        switch (fact.Word, fact.Value)
        {
            case (FactWord.StopIf, ConditionValue stop):
                Situation.End(Of.And(doing.Guard, _proving.Settled(stop.Condition, _proving.Work.Ask(doing), doing.At)));
                break;
            case (FactWord.Decide, NameList { Names: [var decision, ..] }):
                new Decisions(_proving).Take(decision.Value, place, doing);
                break;
            case (FactWord.Perform, PerformValue perform):
                Perform(perform, frame, doing);
                break;
            case (FactWord.HandOver, _):
                HandOver(doing);
                break;
            case (FactWord.End, EndingValue ending):
                Finish(ending, doing.Guard, frame);
                break;
            default:
                _proving.Work.Do(fact, doing);
                break;
        }
    }

    private void Perform(PerformValue perform, Frame frame, Doing doing)
    {
        if (frame.Depth >= Deepest || doing.Names.Into(perform) is not { } names)
            return;
        var callee = names.Own.Procedure;
        foreach (var part in perform.Part is { } name ? callee.Parts.Where(p => p.Name?.Value == name.Value) : callee.Parts.Where(p => p.Name is null || callee.Parts.Length == 1))
        {
            var inside = new Frame(names, part, doing.At, doing.People, frame.Depth + 1);
            _contracts.Perform(inside, doing);
            Run([.. part.Walk(callee)], inside, doing.Guard);
        }
    }

    /// <summary>Other people, after a rest: what they have to look at again is not proved any more.</summary>
    private void HandOver(Doing doing) => _proving.Work.Happen(h => h is PeopleChanging or Resting, doing);

    /// <summary>Done ends this part and whoever performs it goes on; the others end all.</summary>
    private void Finish(EndingValue ending, int guard, Frame frame)
    {
        if (ending.Kind == EndingKind.Done)
            frame.Done = Of.Or(frame.Done, guard);
        else
            Situation.End(guard);
    }
}
