using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Rendering.Site.Drawings;

/// <summary>
/// States of things as the contract and the steps tell them, one step after the other: what a verb implies and what a step
/// leaves. A step that is done only under a condition may or may not change them: then both values stand.
/// </summary>
internal sealed class ThingStates
{
    private const int Deepest = 8;

    private readonly SheetPlan _plan;
    private readonly Words _words;
    private readonly List<string> _order = [];
    private readonly Dictionary<string, string> _values = new(StringComparer.Ordinal);
    private readonly Dictionary<(string Thing, string Value), int> _pieces = [];

    public ThingStates(SheetPlan plan, Words words)
    {
        (_plan, _words) = (plan, words);
        foreach (var condition in plan.Part.Facts.Where(f => f.Word == FactWord.StartsWith).SelectMany(f => f.Conditions))
            Begin(condition, 0);
    }

    /// <summary>What is so during a step, after the steps before it have been asked for.</summary>
    public ImmutableArray<string> During(SheetStep step)
    {
        foreach (var fact in step.Step.Facts)
            Change(fact, step);
        ImmutableArray<string> during = [.. _order.Where(_values.ContainsKey).Select(t => $"{t} {_values[t]}")];
        // a load hangs until the step that lands it is done
        foreach (var landing in step.Step.Facts.Select(f => f.Value).OfType<Landing>())
            _values.Remove(Hung(landing.Load.Value, step));
        return during;
    }

    private void Begin(Condition condition, int depth)
    {
        foreach (var clause in condition.All)
            if (clause is StateClause { Negated: false } state && _plan.Scope.Device(state.Thing.Value) is null)
                Put(Thing(state.Thing.Value, state.AtPlace?.Value, Fills.None), Values(state));
            else if (clause is BundleClause { Name.Value: var name } && depth < Deepest)
                foreach (var inner in _plan.Scope.Machine?.Conditions.Find(name)?.All ?? [])
                    Begin(inner.Value, depth + 1);
    }

    private void Change(Fact fact, SheetStep step)
    {
        switch (fact.Value)
        {
            case LeftState left:
                foreach (var state in left.States)
                    Set(Thing(state.Thing.Value, state.AtPlace?.Value, step.Fills), Values(state), step);
                break;
            case Amounts amounts when ImpliedValues.Of(fact.Word) is { } value:
                foreach (var amount in amounts.All.Where(a => _plan.Scope.Device(a.Thing.Value) is null))
                    Handle(Thing(amount.Thing.Value, amount.AtPlace?.Value, step.Fills), value, amount, step);
                foreach (var amount in amounts.All)
                    if (_plan.Scope.Device(amount.Thing.Value)?.Turns is { } turn && turn.After(fact.Word) is { } turned)
                        Set(Thing(turn.State.Value, amount.AtPlace?.Value, step.Fills), turned.Value, step);
                break;
            case NameList names when fact.Word is FactWord.Drain or FactWord.Fill:
                foreach (var name in names.Names)
                    Set(Thing(name.Value, null, step.Fills), ImpliedValues.Of(fact.Word)!, step);
                break;
            case NameList loads when fact.Word is FactWord.Lift:
                foreach (var load in loads.Names)
                    Set(Hung(load.Value, step), _words.OnTheHook, step);
                break;
        }
    }

    private void Handle(string thing, string value, Amount amount, SheetStep step)
    {
        var whole = amount.OutOf?.Value ?? _plan.Scope.Fasteners(amount.Thing.Value)?.Count?.Value;
        if (amount.Count is not { } count || whole is not { } all || count.Value >= all)
        {
            foreach (var key in _pieces.Keys.Where(k => k.Thing == thing).ToList())
                _pieces.Remove(key);
            Set(thing, value, step);
            return;
        }
        var done = _pieces[(thing, value)] = Math.Min(all, _pieces.GetValueOrDefault((thing, value)) + count.Value);
        Set(thing, done == all ? value : $"{Say.Number(done)} {_words.OutOf} {Say.Number(all)} {value}", step);
    }

    private void Set(string thing, string value, SheetStep step)
    {
        if (step.Guard is null)
            Put(thing, value);
        else if (_values.TryGetValue(thing, out var old) && old != value)
            Put(thing, $"{old} {_words.Or} {value}");
    }

    private void Put(string thing, string value)
    {
        if (!_order.Contains(thing))
            _order.Add(thing);
        _values[thing] = value;
    }

    private static string Hung(string load, SheetStep step) => $"{step.Fills.In(DeclaredName.Spoken(load))},";

    private string Values(StateClause state) => string.Join($" {_words.Or} ", state.Values.Select(v => DeclaredName.SpokenIn(v.Value)));

    private string Thing(string name, string? place, Fills fills) =>
        fills.In(DeclaredName.Spoken(name)) + (place is null ? "" : $" {_words.At} {fills.In(place)}");
}
