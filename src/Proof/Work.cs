using System.Collections.Immutable;
using Witnessmark.Language.Model;

namespace Witnessmark.Proof;

/// <summary>A step being done: on which ways, with what names, and who is in which zone.</summary>
internal sealed record Doing(Moment At, Names Names, int Guard, ImmutableArray<string> People);

/// <summary>What the facts of a step make of the machine. Each change is held against the rules before it is made and after.</summary>
internal sealed class Work(Situation situation, Ways ways, Worths worths, Breaches breaches, Guarding? guarding)
{
    public Asking Ask(Doing doing, string? moment = null) => new(situation, ways, worths, doing.Names, doing.People, moment);

    /// <summary>For what has to hold.</summary>
    public Asking Must(Doing doing) => new(situation, ways, worths, doing.Names, doing.People, null, must: true);

    public void Do(Fact fact, Doing doing)
    {
        switch (fact.Word, fact.Value)
        {
            case (FactWord.Leaves, LeftState left):
                foreach (var clause in left.States)
                    Leave(clause, doing);
                break;
            case (FactWord.Lift, NameList { Names: [var load, ..] }):
                Change(Names.Hook, Names.Hook, worths.Number(doing.Names.Name(load.Value)), doing);
                break;
            case (FactWord.Land, _):
                Change(Names.Hook, Names.Hook, worths.Number("none"), doing);
                break;
            case (FactWord.Drain or FactWord.Fill, NameList names):
                foreach (var name in names.Names)
                    All(name.Value, null, ImpliedValues.Of(fact.Word)!, doing);
                break;
            case (FactWord.Measure or FactWord.Inspect or FactWord.WorkOut or FactWord.Test, NameList names):
                foreach (var name in names.Names)
                    Read(fact.Word, doing.Names.Name(name.Value), doing);
                break;
            case (_, Amounts amounts) when fact.Word != FactWord.Count && ImpliedValues.Of(fact.Word) is { } value:
                foreach (var amount in amounts.All)
                    Handle(amount, fact.Word, value, doing);
                break;
        }
    }

    /// <summary>The proof of a thing ends: it is as if nobody had looked.</summary>
    public void Happen(Func<Happening, bool> what, Doing doing)
    {
        foreach (var state in doing.Names.Machine?.States ?? Items<StateItem>.None)
            if (state.LostAfter.Any(what))
                Lose(state.Id.Value, state.Values[0].Value, doing.Guard, doing);
        foreach (var test in Tests(doing))
            if (test.LostAfter.Any(what))
                Lose(test.Id.Value, "not-done", doing.Guard, doing);
    }

    /// <summary>What is only so within one step, and what must not be so behind it.</summary>
    public void EndStep(Doing doing)
    {
        // what the step has not touched was so before it, and is told where it came about
        foreach (var rule in (guarding?.AtStepEnds ?? []).Where(r => Ask(doing).Cells(r.NeverWhen!).Any(c => situation.Changes(c) is [.., { At: var last }] && last == doing.At)))
            breaches.Never(rule, rule.NeverWhen!, doing.Guard, Ask(doing, Guarding.EndOfStep), doing.At);
        foreach (var state in doing.Names.Machine?.States ?? Items<StateItem>.None)
            if (state.LostWhen.Any(c => c.Value.All is [MomentClause { Moment: Guarding.EndOfStep }]))
                Lose(state.Id.Value, state.Values[0].Value, doing.Guard, doing);
    }

    private static IEnumerable<TestItem> Tests(Doing doing) => (doing.Names.Machine?.Tests ?? Items<TestItem>.None).Concat(doing.Names.Own.Procedure.Tests);

    private void Leave(StateClause clause, Doing doing)
    {
        var written = doing.Names.Name(clause.Values[0].Value);
        if (written.Split(' ', StringSplitOptions.RemoveEmptyEntries) is [var more, "more", var value] && int.TryParse(more, out var count))
            foreach (var cell in doing.Names.Cells(clause.Thing.Value, clause.AtPlace?.Value))
                Change(doing.Names.Name(clause.Thing.Value), cell, from => worths.Moved(from, count, doing.Names.Count(clause.Thing.Value), value), doing);
        else
            foreach (var cell in doing.Names.Device(clause.Thing.Value) is null ? doing.Names.Cells(clause.Thing.Value, clause.AtPlace?.Value) : doing.Names.Tags(clause.Thing.Value))
                Change(doing.Names.Name(clause.Thing.Value), cell, worths.Read(Names.One(written)), doing);
    }

    private void All(string thing, string? place, string value, Doing doing)
    {
        foreach (var cell in doing.Names.Cells(thing, place))
            Change(doing.Names.Name(thing), cell, worths.Number(value), doing);
    }

    /// <summary>Which verdict it has only the work can tell.</summary>
    private void Read(FactWord word, string name, Doing doing)
    {
        string[] answers = word == FactWord.Test ? ["passed", "failed"]
            : (doing.Names.Own.Reading(name) ?? doing.Names.Root.Reading(name)) is { } reading ? [.. reading.Results]
            : (doing.Names.Own.Value(name) ?? doing.Names.Root.Value(name)) is { Accept: null, AcceptAsClearanceOf: null } ? ["worked-out"]
            : ["inside", "outside"];
        if (word == FactWord.Test)
            foreach (var rule in guarding?.Before(name) ?? [])
                if (rule.BeforeAny.Any(h => h is Testing t && t.Test.Value == name))
                    Hold(rule, doing.Guard, doing);
        var value = answers switch
        {
            [] => ways.Always(worths.Number("taken")),
            [var only] => ways.Always(worths.Number(only)),
            _ => situation.Ask(doing.At, name, answers),
        };
        Put(name, name, value, doing.Guard, doing);
    }

    private void Handle(Amount amount, FactWord verb, string value, Doing doing)
    {
        var thing = doing.Names.Name(amount.Thing.Value);
        if (doing.Names.Device(thing) is { } kind)
        {
            new Devices(this, situation, ways, worths, breaches).Move(amount, kind, value, doing);
            return;
        }
        var made = doing.Names.Root.Stack(thing) is null ? value : verb == FactWord.Remove ? "out" : "complete";
        foreach (var cell in doing.Names.Cells(thing, amount.AtPlace?.Value))
            if (amount.Count is { } count)
                Change(thing, cell, from => worths.Moved(from, count.Value, amount.OutOf?.Value ?? doing.Names.Count(thing), made), doing);
            else
                Change(thing, cell, worths.Number(made), doing);
    }

    public void Change(string thing, string cell, int value, Doing doing) => Put(thing, cell, ways.Always(value), doing.Guard, doing);

    private void Change(string thing, string cell, Func<int, int> into, Doing doing) => Put(thing, cell, ways.Mapped(situation.Of(cell), into), doing.Guard, doing);

    private void Lose(string thing, string first, int guard, Doing doing)
    {
        foreach (var cell in situation.Cells.Where(c => c == thing || c.StartsWith($"{thing} at ", StringComparison.Ordinal)).ToList())
        {
            var standing = ways.Mapped(situation.Of(cell), v => worths[v].Whole is { } whole && whole != first && whole != Worths.Unknown ? Ways.Yes : Ways.No);
            situation.Write(cell, ways.And(guard, standing), ways.Always(worths.Number(first)), doing.At);
        }
    }

    /// <summary>Asked before, made, looked at after.</summary>
    private void Put(string thing, string cell, int value, int guard, Doing doing)
    {
        foreach (var rule in guarding?.Before(thing) ?? [])
            foreach (var becoming in rule.BeforeAny.OfType<Becoming>().Where(b => b.Thing.Value == thing && IsAt(b, cell, doing)))
                Hold(rule, ways.And(guard, Becomes(becoming, cell, value)), doing);
        foreach (var becoming in Happenings(thing, doing).Where(b => IsAt(b, cell, doing)))
            Happen(h => ReferenceEquals(h, becoming), doing with { Guard = ways.And(guard, Becomes(becoming, cell, value)) });
        situation.Write(cell, guard, value, doing.At);
        EndProofs(thing, doing);
        foreach (var rule in guarding?.Never(thing) ?? [])
            breaches.Never(rule, rule.NeverWhen!, guard, Ask(doing), doing.At);
    }

    private static bool IsAt(Becoming becoming, string cell, Doing doing) =>
        becoming.AtPlace is not { } place || doing.Names.Cells(becoming.Thing.Value, place.Value).Contains(cell);

    /// <summary>It was not so before, or nobody knows, and it is now.</summary>
    private int Becomes(Becoming becoming, string cell, int value)
    {
        ImmutableArray<string> wanted = [Names.One(becoming.Value.Value)];
        var was = ways.Mapped(situation.Of(cell), v => worths.Is(v, wanted) == Ways.Yes ? Ways.Yes : Ways.No);
        return ways.And(ways.Mapped(value, v => worths.Is(v, wanted) == Ways.Yes ? Ways.Yes : Ways.No), ways.Not(was));
    }

    private void Hold(Interlock rule, int guard, Doing doing)
    {
        if (guard == Ways.No || rule.Needed is not { } needed)
            return;
        var asking = Ask(doing);
        var when = rule.OnlyWhen is { } only ? situation.Settled(asking.Holds(only), doing.At, only.At.Text) : Ways.Yes;
        breaches.Must(BreachKind.Interlock, rule, needed, ways.And(guard, when), Must(doing), doing.Names, doing.At);
    }

    private static IEnumerable<Becoming> Happenings(string thing, Doing doing) =>
        (doing.Names.Machine?.States ?? Items<StateItem>.None).SelectMany(s => s.LostAfter).Concat(Tests(doing).SelectMany(t => t.LostAfter)).OfType<Becoming>().Where(b => b.Thing.Value == thing);

    /// <summary>A proof that hangs on the thing ends when its condition comes true.</summary>
    private void EndProofs(string thing, Doing doing)
    {
        var asking = Ask(doing);
        foreach (var state in doing.Names.Machine?.States ?? Items<StateItem>.None)
            foreach (var condition in state.LostWhen.Where(c => Speaks(c.Value, thing)))
                Lose(state.Id.Value, state.Values[0].Value, ways.And(doing.Guard, ways.Where(asking.Holds(condition.Value), Ways.Yes)), doing);
        foreach (var test in Tests(doing))
            foreach (var condition in test.LostWhen.Where(c => Speaks(c.Value, thing)))
                Lose(test.Id.Value, "not-done", ways.And(doing.Guard, ways.Where(asking.Holds(condition.Value), Ways.Yes)), doing);
    }

    private static bool Speaks(Condition condition, string thing) => condition.All.Any(c => c is StateClause s && s.Thing.Value == thing);
}
