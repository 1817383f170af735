using System.Collections.Immutable;
using Witnessmark.Language.Text;

namespace Witnessmark.Language.Model;

/// <summary>The words that the facts of one procedure put on the sheet.</summary>
internal sealed class FactSheetWords(Scope root, Scope own, Func<string, string?> given, WordCollection words)
{
    private readonly ItemSheetWords _items = new(root, own, words);

    /// <summary>The name that a parameter stands for; any other as it is.</summary>
    public string Filled(string written) => written is ['{', .. var name, '}'] ? given(name) ?? written : written;

    /// <summary>What the step that is read stops for.</summary>
    private ImmutableHashSet<string> _stops = [];

    private bool _namesTool;

    public void Of(ImmutableArray<Fact> facts)
    {
        _namesTool = facts.Find(FactWord.Tool) is not null;
        _stops = [.. facts.Where(f => f.Word == FactWord.StopIf).SelectMany(f => f.Conditions).SelectMany(c => c.All).OfType<StateClause>().Select(s => Filled(s.Thing.Value))];
        foreach (var fact in facts)
            Of(fact);
    }

    private void Of(Fact fact)
    {
        foreach (var condition in fact.Conditions)
            Condition(condition, bundlesOpen: fact.Word is FactWord.StartsWith or FactWord.EndsWith);
        switch (fact.Word, fact.Value)
        {
            case (FactWord.Leaves or FactWord.Odds or FactWord.Was or FactWord.Checks or FactWord.Perform or FactWord.Zone, _):
                break;
            case (FactWord.Call, SpokenWords call):
                Call(call);
                break;
            case (_, Amounts amounts):
                foreach (var amount in amounts.All)
                    Handled(fact.Word, Filled(amount.Thing.Value), amount.Thing.At);
                break;
            case (_, NameList list):
                foreach (var name in list.Names)
                    Named(fact.Word, Filled(name.Value), name.At);
                break;
            default:
                Said(fact.Value);
                Flow(fact.Value);
                break;
        }
    }

    private void Handled(FactWord word, string name, Location at)
    {
        if (word == FactWord.Fit)
            _items.Stack(name);
        else if (word == FactWord.Tighten)
            Tightened(name);
        else if (word is FactWord.Place or FactWord.Recover)
            _items.Device(name);
        else if (word == FactWord.Count)
            words.Name(name, at);
        // what comes off is bagged and tagged
        else if (word is FactWord.Remove or FactWord.Loosen)
            _items.Bagged(name);
    }

    private void Tightened(string name)
    {
        _items.Fasteners(name);
        // a step that names no tool means the one wrench that reaches
        if (!_namesTool && root.Fasteners(name) is { } group && root.OnlyWrenchFor(group) is { } wrench)
            words.Name(wrench.Id);
    }

    private void Named(FactWord word, string name, Location at)
    {
        if (word is FactWord.By or FactWord.Tools)
            words.Name(name, at);
        else if (word is FactWord.Measure or FactWord.Inspect)
            _items.Reading(name, _stops.Contains(name));
        else if (word == FactWord.WorkOut)
            _items.Worked(name);
        else if (word == FactWord.Test)
            _items.Test(name, _stops.Contains);
        else if (word == FactWord.Lift)
            _items.Load(name);
        else if (word is FactWord.Drain or FactWord.Fill)
            _items.Space(name);
        else if (word == FactWord.Tool)
            words.Name(name, at);
    }

    private void Said(FactValue value)
    {
        switch (value)
        {
            case ConditionValue { Otherwise: { } otherwise }:
                words.Text(otherwise);
                break;
            case Duration { Until: { } until }:
                words.Text(until);
                break;
            case Checker checker:
                words.Name(checker.Role);
                break;
            case DebtValue debt:
                words.Text(debt.What);
                break;
            case HandOverValue over:
                foreach (var role in over.From.Concat(over.To))
                    words.Name(role);
                break;
        }
    }

    private void Flow(FactValue value)
    {
        switch (value)
        {
            case OutcomeValue outcome:
                words.Name(outcome.Name);
                break;
            case EndingValue end:
                words.Name(end.Name);
                break;
            case AgainFrom again:
                words.Name(again.Then.Name);
                break;
            case Loop loop:
                words.Name(Filled(loop.Kind.Value), loop.Kind.At);
                foreach (var name in loop.In)
                    words.Name(Filled(name.Value), name.At);
                break;
        }
    }

    private void Call(SpokenWords spoken)
    {
        if (own.Call(spoken.Text.Value) is not { } named)
            return;
        words.Text(named.Call, named.Id.At);
        words.Text(named.Answer, named.Id.At);
    }

    private void Condition(Condition condition, bool bundlesOpen)
    {
        foreach (var clause in condition.All)
            Clause(clause, bundlesOpen, []);
    }

    private void Clause(Clause clause, bool bundlesOpen, ImmutableHashSet<string> within)
    {
        switch (clause)
        {
            case StateClause state:
                State(state);
                break;
            case BundleClause bundle when bundlesOpen && root.Machine?.Conditions.Find(bundle.Name.Value) is { } open && !within.Contains(bundle.Name.Value):
                foreach (var inner in open.All.SelectMany(c => c.Value.All))
                    Clause(inner, bundlesOpen, within.Add(bundle.Name.Value));
                break;
            case BundleClause bundle:
                words.Name(bundle.Name);
                break;
            case PeopleClause people:
                words.Name(Filled(people.Zone.Value), people.Zone.At);
                break;
            case DevicesClause devices:
                if (devices.ThatBlock is { } what)
                    words.Name(what);
                words.Value(devices.Value, null);
                break;
        }
    }

    private void State(StateClause state)
    {
        var thing = Filled(state.Thing.Value);
        // "condition of {group} = oiled" is known from the data sheet: the step is there or left out, and nothing is printed
        if (thing.StartsWith("condition of ", StringComparison.Ordinal))
            return;
        words.Name(thing, state.Thing.At);
        // in the machine from the start, it has its tag
        _items.Device(thing);
        if (state.AtPlace is { } place)
            words.Name(Filled(place.Value), place.At);
        foreach (var value in state.Values)
            words.Value(value with { Value = Filled(value.Value) }, thing);
    }
}
