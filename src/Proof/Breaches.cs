using System.Collections.Immutable;
using Witnessmark.Language.Model;

namespace Witnessmark.Proof;

/// <summary>Collects what goes wrong, each cause once: what was missing counts as done from there on.</summary>
internal sealed class Breaches(Situation situation, Ways ways, Worths worths)
{
    // a bundle that names itself ends here
    private const int Deepest = 8;

    private readonly List<Breach> _found = [];
    private readonly Dictionary<string, int> _told = new(StringComparer.Ordinal);

    public ImmutableArray<Breach> Found => [.. _found];

    /// <summary>Something has to hold here: each clause that does not, on some way, is a breach.</summary>
    public void Must(BreachKind kind, Interlock? rule, Condition condition, int guard, Asking asking, Names names, Moment at)
    {
        foreach (var clause in Clauses(condition, names, 0))
            Must(kind, rule, clause, ways.And(guard, situation.Alive), asking, names, at);
    }

    /// <summary>Something must not hold: told where it first does.</summary>
    public void Never(Interlock rule, Condition condition, int guard, Asking asking, Moment at)
    {
        var holds = ways.And(ways.And(guard, situation.Alive), asking.Holds(condition));
        foreach (var (end, sure) in new[] { (Ways.Yes, true), (Ways.Unsure, false) })
        {
            var key = $"{rule.Id.Value} {sure}";
            var bad = ways.And(ways.Where(holds, end), ways.Not(_told.GetValueOrDefault(key, Ways.No)));
            if (bad == Ways.No || !sure && _told.GetValueOrDefault($"{rule.Id.Value} True", Ways.No) != Ways.No)
                continue;
            // once told, told for all ways: the cause is one
            _told[key] = Ways.Yes;
            var open = sure ? condition.All[0] : condition.All.FirstOrDefault(c => ways.CanBe(ways.And(bad, asking.Holds(c)), Ways.Unsure)) ?? condition.All[0];
            _found.Add(new Breach(BreachKind.Interlock, at, rule, open, null, sure, Story(bad, asking.Holds(condition), [.. asking.Cells(condition)], at)));
        }
    }

    /// <summary>About one cell: a device that is in already, still in, or not in.</summary>
    public void Cell(BreachKind kind, string cell, int bad, Moment at)
    {
        bad = ways.And(bad, situation.Alive);
        if (bad != Ways.No)
            _found.Add(new Breach(kind, at, null, null, cell, Sure: true, Story(bad, situation.Of(cell), [cell], at)));
    }

    private void Must(BreachKind kind, Interlock? rule, Clause clause, int guard, Asking asking, Names names, Moment at)
    {
        var holds = asking.Holds(clause);
        var (bad, open) = (ways.And(guard, ways.Where(holds, Ways.No)), ways.And(guard, ways.Where(holds, Ways.Unsure)));
        if (bad == Ways.No && open == Ways.No)
            return;
        var cells = asking.Cells(new Condition([clause], clause.At)).ToImmutableArray();
        var sure = bad != Ways.No;
        _found.Add(new Breach(kind, at, rule, clause, null, sure, Story(sure ? bad : open, holds, cells, at)));
        Assume(clause, cells, ways.Or(bad, open));
    }

    /// <summary>From here on as if it had been done.</summary>
    private void Assume(Clause clause, ImmutableArray<string> cells, int guard)
    {
        var value = clause switch
        {
            StateClause { Negated: false, Values: [var first, ..] } => first.Value,
            DevicesClause { Every: true } devices => devices.Value.Value,
            _ => null,
        };
        if (value is not null)
            foreach (var cell in cells)
                situation.Write(cell, guard, ways.Always(worths.Read(Names.One(value))), null);
    }

    /// <summary>A bundle is each of its lines: one of them is missing, not all.</summary>
    private static IEnumerable<Clause> Clauses(Condition condition, Names names, int depth) =>
        condition.All.SelectMany(c => c is BundleClause bundle && depth < Deepest && names.Machine?.Conditions.Find(bundle.Name.Value) is { } of
            ? of.All.SelectMany(l => Clauses(l.Value, names, depth + 1))
            : [c]);

    /// <summary>The shortest way there: what was found out on it, and who changed last what it is about.</summary>
    /// <param name="about">What hangs on the answers that belong to the story: others only say that work went on.</param>
    private ImmutableArray<StoryLine> Story(int bad, int about, ImmutableArray<string> cells, Moment at)
    {
        var answers = ways.Shortest(bad, Ways.Yes) ?? ImmutableSortedDictionary<int, int>.Empty;
        var belong = ways.Questions(about).Union(ways.Questions(bad).Except(ways.Questions(situation.Alive))).ToHashSet();
        var lines = new List<StoryLine>();
        foreach (var (question, answer) in answers)
            if (belong.Contains(question) && situation.Questions[question] is { At: { } asked } told)
                lines.Add(new StoryLine(asked, $"{told.What} = {told.Answers[answer]}"));
        foreach (var cell in cells.Distinct(StringComparer.Ordinal))
            if (situation.Changes(cell).LastOrDefault(w => ways.At(w.Guard, answers) == Ways.Yes) is { At: { } changed })
                lines.Add(new StoryLine(changed, $"{cell} = {worths[ways.At(situation.Of(cell), answers)]}"));
        return [.. lines.Where(l => l.At.Number != at.Number).DistinctBy(l => (l.At.Number, l.Said)).OrderBy(l => l.At.Number)];
    }
}
