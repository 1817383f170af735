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

    private readonly Ways _ways = new();
    private readonly Worths _worths = new();
    private readonly Situation _situation;
    private readonly Breaches _breaches;
    private readonly Work _work;
    private readonly Guarding? _guarding;
    private readonly Dictionary<StepInPlace, StopPoint> _points = [];
    private readonly List<StepInPlace> _order = [];
    private int _number;

    private Walk(Scope scope)
    {
        _situation = new Situation(_ways, _worths);
        _breaches = new Breaches(_situation, _ways, _worths);
        _guarding = scope.Machine is { } machine ? Guarding.Of(machine) : null;
        _work = new Work(_situation, _ways, _worths, _breaches, _guarding);
    }

    public static PartProof Of(Scope scope, ProcedurePart part)
    {
        var walk = new Walk(scope);
        try
        {
            walk.Prove(scope, part);
            return new PartProof(part, walk._breaches.Found, [.. walk._order.Select(p => walk._points[p])], TooManyWays: false);
        }
        catch (TooManyWaysException)
        {
            return new PartProof(part, [], [], TooManyWays: true);
        }
    }

    /// <summary>A performed part, or the one that is proved: where it ends early, its own steps rest.</summary>
    private sealed class Frame(Names names, ProcedurePart part, Moment? performedBy, ImmutableArray<string> people, int depth)
    {
        public Names Names => names;

        public ProcedurePart Part => part;

        public Moment? PerformedBy => performedBy;

        public ImmutableArray<string> People => people;

        public int Depth => depth;

        /// <summary>Ways on which it is over.</summary>
        public int Done { get; set; } = Ways.No;
    }

    private void Prove(Scope scope, ProcedurePart part)
    {
        var frame = new Frame(Names.Of(scope), part, null, [], 0);
        _situation.Write(Names.Hook, Ways.Yes, _ways.Always(_worths.Number("none")), null);
        foreach (var condition in part.Facts.Where(f => f.Word == FactWord.StartsWith).SelectMany(f => f.Conditions))
            Agree(condition, frame, Ways.Yes, 0);
        var places = part.Walk(scope.Procedure).ToImmutableArray();
        if (places.IsEmpty)
            return;
        Run(places, frame, Ways.Yes);
        if (_last is { } last)
            End(frame, scope, last);
    }

    private Moment? _last;

    /// <summary>What a contract says is so.</summary>
    private void Agree(Condition condition, Frame frame, int guard, int depth)
    {
        foreach (var clause in condition.All)
            switch (clause)
            {
                case StateClause { Negated: false } said:
                    var values = said.Values.Select(v => _worths.Read(Names.One(frame.Names.Name(v.Value)))).ToList();
                    foreach (var cell in frame.Names.Device(said.Thing.Value) is null ? frame.Names.Cells(said.Thing.Value, said.AtPlace?.Value) : frame.Names.Tags(said.Thing.Value))
                        _situation.Write(cell, guard, values.Count == 1 ? _ways.Always(values[0]) : _situation.Ask(null, cell, [.. said.Values.Select(v => v.Value)]), null);
                    break;
                case BundleClause bundle when depth < Deepest:
                    foreach (var line in frame.Names.Machine?.Conditions.Find(bundle.Name.Value)?.All ?? [])
                        Agree(line.Value, frame, guard, depth + 1);
                    break;
                case DevicesClause { Every: true } devices:
                    foreach (var tag in frame.Names.Devices(devices.ThatBlock?.Value).SelectMany(k => frame.Names.Tags(k.Id.Value)))
                        _situation.Write(tag, guard, _ways.Always(_worths.Number(devices.Value.Value)), null);
                    break;
            }
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
            var inside = place.Length == 0 ? frame : new Frame(frame.Names.At(kind, place), frame.Part, frame.PerformedBy, frame.People, frame.Depth) { Done = frame.Done };
            turn(inside, guard);
            frame.Done = inside.Done;
            if (until?.Value is ConditionValue waited)
                guard = _ways.And(guard, _ways.Not(_situation.Settled(new Asking(_situation, _ways, _worths, frame.Names, [], null).Holds(waited.Condition), null, waited.Condition.At.Text)));
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
        guard = _ways.And(guard, _situation.Alive, _ways.Not(frame.Done));
        if (place.Effective(FactWord.OnlyIf)?.Value is ConditionValue only)
            guard = _ways.And(guard, _situation.Settled(new Asking(_situation, _ways, _worths, frame.Names, [], null).Holds(only.Condition), at, only.Condition.At.Text));
        if (guard != Ways.No)
        {
            _last = at;
            var people = place.Effective(FactWord.Zone)?.Value is NameList zones ? [.. zones.Names.Select(n => n.Value).Where(n => n != "none")] : frame.People;
            if (place.Step.Find(FactWord.ForEach)?.Value is Loop loop)
                Turns(loop, null, frame, guard, (turn, on) => Done(place, turn, new Doing(at, turn.Names, on, people)));
            else
                Done(place, frame, new Doing(at, frame.Names, guard, people));
        }
        if (frame.Depth == 0)
            Point(place, frame);
        return _ways.And(guard, _situation.Alive, _ways.Not(frame.Done));
    }

    private void Done(StepInPlace place, Frame frame, Doing doing)
    {
        foreach (var needed in place.Step.All(FactWord.Requires).SelectMany(f => f.Conditions))
            _breaches.Must(BreachKind.Requirement, null, needed, doing.Guard, _work.Ask(doing), doing.Names, doing.At);
        foreach (var rule in doing.People.SelectMany(z => _guarding?.NeverIn(z) ?? []).Distinct())
            _breaches.Never(rule, rule.NeverWhen!, doing.Guard, _work.Ask(doing), doing.At);
        foreach (var fact in place.Step.Facts)
            Fact(fact, place, frame, doing);
        _work.EndStep(doing);
    }

    private void Fact(Fact fact, StepInPlace place, Frame frame, Doing doing)
    {
        switch (fact.Word, fact.Value)
        {
            case (FactWord.StopIf, ConditionValue stop):
                _situation.End(_ways.And(doing.Guard, _situation.Settled(_work.Ask(doing).Holds(stop.Condition), doing.At, stop.Condition.At.Text)));
                break;
            case (FactWord.Decide, NameList { Names: [var decision, ..] }):
                Decide(decision.Value, place, doing);
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
                _work.Do(fact, doing);
                break;
        }
    }

    /// <summary>The first outcome whose condition holds; where none does, the decision is not taken.</summary>
    private void Decide(string decision, StepInPlace place, Doing doing)
    {
        var left = doing.Guard;
        foreach (var outcome in place.Step.All(FactWord.Outcome).Select(f => f.Value).OfType<OutcomeValue>())
        {
            var asking = _work.Ask(doing);
            var holds = outcome.Otherwise ? Ways.Yes : outcome.When.Aggregate(Ways.No, (any, c) => _ways.Or(any, _situation.Settled(asking.Holds(c), doing.At, c.At.Text)));
            var on = _ways.And(left, holds);
            _situation.Write(decision, on, _ways.Always(_worths.Number(outcome.Name.Value)), doing.At);
            left = _ways.And(left, _ways.Not(holds));
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
            foreach (var start in part.Facts.Where(f => f.Word == FactWord.StartsWith).SelectMany(f => f.Conditions))
                _breaches.Must(BreachKind.Contract, null, start, doing.Guard, _work.Ask(doing with { Names = names }), names, doing.At);
            Run([.. part.Walk(callee)], inside, _ways.And(doing.Guard, _situation.Alive));
        }
    }

    /// <summary>Other people, after a rest: what they have to look at again is not proved any more.</summary>
    private void HandOver(Doing doing) => _work.Happen(h => h is PeopleChanging or Resting, doing);

    /// <summary>Done ends this part and whoever performs it goes on; the others end all.</summary>
    private void Finish(EndingValue ending, int guard, Frame frame)
    {
        if (ending.Kind == EndingKind.Done)
            frame.Done = _ways.Or(frame.Done, guard);
        else
            _situation.End(guard);
    }

    private void Point(StepInPlace place, Frame frame)
    {
        var asking = new Asking(_situation, _ways, _worths, frame.Names, [], Guarding.SafeStop);
        var on = _ways.And(_situation.Alive, _ways.Not(frame.Done));
        var told = (_guarding?.AtStops ?? []).Select(rule => (rule, Holds: _ways.And(on, asking.Holds(rule.NeverWhen!)))).ToList();
        // a step that is done again is left as safely as the worst of its turns
        var before = _points.GetValueOrDefault(place);
        var against = told.Where(t => _ways.CanBe(t.Holds, Ways.Yes)).Select(t => t.rule).Union(before?.Against ?? []).ToImmutableArray();
        var unsure = told.Where(t => _ways.CanBe(t.Holds, Ways.Unsure)).Select(t => t.rule).Union(before?.Unsure ?? []).Except(against).ToImmutableArray();
        if (before is null)
            _order.Add(place);
        _points[place] = new StopPoint(place, against, unsure);
    }

    private void End(Frame frame, Scope scope, Moment last)
    {
        var doing = new Doing(last, frame.Names, _situation.Alive, []);
        foreach (var promise in frame.Part.Facts.Where(f => f.Word == FactWord.EndsWith).SelectMany(f => f.Conditions))
            _breaches.Must(BreachKind.Promise, null, promise, doing.Guard, _work.Ask(doing), frame.Names, last);
        new Leftovers(_situation, _ways, _worths, _breaches).Look(frame.Names, frame.Part, scope.Procedure.IsJob, last);
    }
}
