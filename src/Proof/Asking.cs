using System.Collections.Immutable;
using Witnessmark.Language.Model;

namespace Witnessmark.Proof;

/// <summary>Whether a condition holds in a situation: yes, no or not known, on each way.</summary>
/// <param name="people">Zones in which somebody is.</param>
/// <param name="moment">What the point is: <c>safe stop</c>, <c>end of step</c>, or nothing of the kind.</param>
/// <param name="must">Whether it has to hold, every piece of it.</param>
internal sealed class Asking(Situation situation, Ways ways, Worths worths, Names names, ImmutableArray<string> people, string? moment, bool must = false)
{
    private const int Deepest = 8;
    private const string Taken = "taken";
    private const string NotTaken = "not-taken";
    private const string WorkedOut = "worked-out";
    private const string NotWorkedOut = "not-worked-out";
    private const string ConditionOf = "condition of ";

    public int Holds(Condition condition) => Holds(condition, 0);

    public int Holds(Clause clause) => Holds(clause, 0);

    private int Holds(Condition condition, int depth) => condition.All.Aggregate(Ways.Yes, (both, clause) => ways.And(both, Holds(clause, depth)));

    private int Holds(Clause clause, int depth) => clause switch
    {
        MomentClause m => m.Moment == moment ? Ways.Yes : Ways.No,
        PeopleClause p => people.Contains(names.Name(p.Zone.Value)) ? Ways.Yes : Ways.No,
        DevicesClause d => Devices(d),
        BundleClause b when depth < Deepest && names.Machine?.Conditions.Find(b.Name.Value) is { } bundle => bundle.All.Aggregate(Ways.Yes, (both, c) => ways.And(both, Holds(c.Value, depth + 1))),
        StateClause s when names.Machine?.Openings.Find(s.Thing.Value) is { } opening => Stands(opening, s, depth),
        StateClause s => State(s),
        _ => Ways.Unsure,
    };

    /// <summary>The cells that a clause looks at.</summary>
    public IEnumerable<string> Cells(Condition condition) => condition.All.SelectMany(c => Cells(c, 0));

    private IEnumerable<string> Cells(Clause clause, int depth) => clause switch
    {
        DevicesClause d => names.Devices(d.ThatBlock?.Value).SelectMany(k => names.Tags(k.Id.Value)),
        BundleClause b when depth < Deepest && names.Machine?.Conditions.Find(b.Name.Value) is { } bundle => bundle.All.SelectMany(c => c.Value.All).SelectMany(c => Cells(c, depth + 1)),
        StateClause s when names.Machine?.Openings.Find(s.Thing.Value) is { } opening =>
            (opening.OpenWhen?.Value.All.SelectMany(c => Cells(c, depth + 1)) ?? []).Concat(opening.CoveredBy is { } cover ? names.Tags(cover.Value) : []),
        StateClause s => CellsOf(s),
        _ => [],
    };

    private ImmutableArray<string> CellsOf(StateClause clause) =>
        names.Device(clause.Thing.Value) is not null ? names.Tags(clause.Thing.Value) : names.Cells(clause.Thing.Value, clause.AtPlace?.Value);

    private int State(StateClause clause)
    {
        if (clause.Thing.Value.StartsWith(ConditionOf, StringComparison.Ordinal))
            return Thread(clause);
        var isGroup = names.Root.Fasteners(names.Name(clause.Thing.Value)) is not null;
        ImmutableArray<string> wanted = [.. clause.Values.Select(v => Names.One(names.Name(v.Value))).SelectMany(v => isGroup ? OfBolts(v) : [v])];
        var told = CellsOf(clause).Select(cell => ways.Mapped(situation.Of(cell), v => Is(v, wanted, clause))).ToList();
        var any = clause.AtPlace?.Value.StartsWith("any ", StringComparison.Ordinal) is true;
        // half of the pieces of one kind placed is neither placed nor stored: that is no breach of what must not be, and no fulfilment of what must
        if (!must && names.Device(clause.Thing.Value) is not null)
            return Turned(Alike(told), clause.Negated);
        var holds = any ? told.Aggregate(Ways.No, (a, b) => ways.Or(a, b)) : told.Aggregate(Ways.Yes, (a, b) => ways.And(a, b));
        return Turned(holds, clause.Negated);
    }

    private int Turned(int holds, bool negated) => negated ? ways.Not(holds) : holds;

    private int Alike(List<int> told)
    {
        var (all, some) = (told.Aggregate(Ways.Yes, (a, b) => ways.And(a, b)), told.Aggregate(Ways.No, (a, b) => ways.Or(a, b)));
        return ways.Choose(ways.Where(some, Ways.No), Ways.No, ways.Choose(ways.Where(all, Ways.Yes), Ways.Yes, ways.Always(Ways.Unsure)));
    }

    /// <summary>A bolt that is in its hole and no more is loose; one that is tight is in its hole too.</summary>
    private static string[] OfBolts(string value) => value switch
    {
        "loose" => ["loose", "fitted"],
        "fitted" => ["fitted", "loose", "snug", "torqued"],
        _ => [value],
    };

    private int Is(int value, ImmutableArray<string> wanted, StateClause clause)
    {
        if (worths[value].Whole is { } whole)
        {
            // a decision that was not taken on this way has no outcome
            if (whole == Worths.Unknown && names.IsDecision(clause.Thing.Value))
                return Ways.No;
            if (wanted is [Taken or WorkedOut])
                return whole == Worths.Unknown ? Ways.Unsure : whole is NotTaken or NotWorkedOut ? Ways.No : Ways.Yes;
        }
        return worths.Is(value, wanted);
    }

    private int Thread(StateClause clause)
    {
        var group = names.Root.Fasteners(names.Name(clause.Thing.Value[ConditionOf.Length..].Trim()));
        return group?.Condition?.Value is { } condition ? clause.HoldsAt(condition) ? Ways.Yes : Ways.No : Ways.Unsure;
    }

    private int Devices(DevicesClause clause)
    {
        var told = names.Devices(clause.ThatBlock?.Value).SelectMany(k => names.Tags(k.Id.Value)).Select(t => ways.Mapped(situation.Of(t), v => worths.Is(v, [clause.Value.Value])));
        return clause.Every ? told.Aggregate(Ways.Yes, (a, b) => ways.And(a, b)) : told.Aggregate(Ways.No, (a, b) => ways.Or(a, b));
    }

    /// <summary>Open while it is not sure to be shut or covered.</summary>
    private int Stands(Opening opening, StateClause asked, int depth)
    {
        var open = opening.OpenWhen is { } when ? Holds(when.Value, depth + 1) : Ways.Unsure;
        var covered = opening.CoveredBy is { } cover ? names.Tags(cover.Value).Aggregate(Ways.Yes, (a, t) => ways.And(a, ways.Mapped(situation.Of(t), v => worths.Is(v, ["placed"])))) : Ways.No;
        var stands = ways.And(open, ways.Not(covered));
        return asked.HoldsAt("open") ? stands : ways.Not(stands);
    }
}
