using Witnessmark.Language.Model;

namespace Witnessmark.Proof;

/// <summary>A point of the work: the step, and the steps that performed it, outermost first.</summary>
public sealed record Moment(int Number, StepInPlace Place, Moment? PerformedBy)
{
    /// <summary>The step of the procedure or job that is proved.</summary>
    public Moment Outermost => PerformedBy?.Outermost ?? this;
}

/// <summary>A change of one cell: on which ways, and where in the work.</summary>
internal readonly record struct Written(string Cell, int Guard, Moment At);

/// <summary>The machine at one point of the work, on all ways at once, and what brought it there.</summary>
internal sealed class Situation(Ways ways, Worths worths)
{
    private readonly Dictionary<string, int> _cells = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<Written>> _written = new(StringComparer.Ordinal);
    private readonly List<(Moment? At, string What, IReadOnlyList<string> Answers)> _questions = [];
    private readonly Dictionary<string, int> _assumed = new(StringComparer.Ordinal);

    /// <summary>Ways on which work goes on.</summary>
    public int Alive { get; private set; } = Ways.Yes;

    public IReadOnlyList<(Moment? At, string What, IReadOnlyList<string> Answers)> Questions => _questions;

    public IEnumerable<string> Cells => _cells.Keys;

    public int Of(string cell) => _cells.GetValueOrDefault(cell, ways.Always(worths.Number(Worths.Unknown)));

    public bool IsKnown(string cell) => _cells.ContainsKey(cell);

    public IReadOnlyList<Written> Changes(string cell) => _written.GetValueOrDefault(cell) ?? [];

    /// <param name="at">Null for what a contract says.</param>
    public void Write(string cell, int guard, int value, Moment? at)
    {
        if (guard == Ways.No)
            return;
        _cells[cell] = ways.Choose(guard, value, Of(cell));
        if (at is not null)
        {
            if (!_written.TryGetValue(cell, out var changes))
                _written[cell] = changes = [];
            changes.Add(new Written(cell, guard, at));
        }
    }

    public void End(int guard) => Alive = ways.And(Alive, ways.Not(guard));

    /// <summary>Something that only the work itself can tell: which verdict a reading has.</summary>
    public int Ask(Moment? at, string what, IReadOnlyList<string> answers)
    {
        _questions.Add((at, what, answers));
        return ways.Asked(_questions.Count - 1, answers.Select(worths.Number));
    }

    /// <summary>A condition of which it is not known whether it holds holds on some ways and not on others.</summary>
    public int Settled(int condition, Moment? at, string what)
    {
        if (!ways.CanBe(condition, Ways.Unsure))
            return condition;
        if (!_assumed.TryGetValue(what, out var open))
        {
            _questions.Add((at, what, ["no", "yes"]));
            _assumed[what] = open = ways.Asked(_questions.Count - 1, [Ways.No, Ways.Yes]);
        }
        var (sure, maybe) = (ways.Where(condition, Ways.Yes), ways.Where(condition, Ways.Unsure));
        return ways.Or(sure, ways.And(maybe, open));
    }
}
