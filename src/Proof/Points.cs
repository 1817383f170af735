using System.Collections.Immutable;
using Witnessmark.Language.Model;

namespace Witnessmark.Proof;

/// <summary>After each step of the part that is proved: whether people may leave the machine there.</summary>
internal sealed class Points(Proving proving)
{
    private readonly Dictionary<StepInPlace, StopPoint> _points = [];
    private readonly List<StepInPlace> _order = [];

    public ImmutableArray<StopPoint> All => [.. _order.Select(p => _points[p])];

    public void Add(StepInPlace place, Frame frame)
    {
        var asking = proving.Asking(frame.Names, Guarding.SafeStop);
        var on = proving.Ways.And(proving.Situation.Alive, proving.Ways.Not(frame.Done));
        var told = (proving.Guarding?.AtStops ?? []).Select(rule => (rule, Holds: proving.Ways.And(on, asking.Holds(rule.NeverWhen!)))).ToList();
        // a step that is done again is left as safely as the worst of its turns
        var before = _points.GetValueOrDefault(place);
        var against = told.Where(t => proving.Ways.CanBe(t.Holds, Ways.Yes)).Select(t => t.rule).Union(before?.Against ?? []).ToImmutableArray();
        var unsure = told.Where(t => proving.Ways.CanBe(t.Holds, Ways.Unsure)).Select(t => t.rule).Union(before?.Unsure ?? []).Except(against).ToImmutableArray();
        if (before is null)
            _order.Add(place);
        _points[place] = new StopPoint(place, against, unsure);
    }
}
