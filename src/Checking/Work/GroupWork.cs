using System.Collections.Immutable;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Work;

/// <summary>One handling of a group of fasteners.</summary>
/// <param name="Number">How many; all of them when the step gives no number.</param>
internal readonly record struct Handling(StepInPlace Place, FactWord Verb, Amount Amount, int Number);

/// <summary>All that a part of a procedure does with one group at one place, in order.</summary>
internal sealed record GroupWork(ProcedurePart Part, FastenerGroup Group, string? AtPlace, int Has, ImmutableArray<Handling> Handlings)
{
    public IEnumerable<Handling> Of(params FactWord[] verbs) => Handlings.Where(h => verbs.Contains(h.Verb));

    public int Sum(FactWord verb) => Of(verb).Sum(h => h.Number);

    /// <summary>Whether some of it is done only sometimes, or more than once: then numbers cannot simply be added.</summary>
    public bool Depends => Handlings.Any(h => h.Place.Effective(FactWord.OnlyIf) is not null || h.Place.Effective(FactWord.ForEach) is not null);

    /// <summary>What the part promises for the group at its end, or nothing.</summary>
    public IEnumerable<string> Promised =>
        Part.Facts.Where(f => f.Word == FactWord.EndsWith).Select(f => f.Value).OfType<ConditionValue>().SelectMany(c => c.Condition.All)
            .OfType<StateClause>().Where(c => c.Thing.Value == Group.Id.Value && !c.Negated).SelectMany(c => c.Values).Select(v => v.Value);

    public string Name => AtPlace is null ? Group.Id.Value : $"{Group.Id.Value} at {AtPlace}";

    private static readonly Once<Scope, ImmutableArray<GroupWork>> InScope = new(s => [.. Find(s)]);

    public static ImmutableArray<GroupWork> In(Scope scope) => InScope.Of(scope);

    private static IEnumerable<GroupWork> Find(Scope scope)
    {
        foreach (var part in scope.Procedure.Parts)
        {
            var handled = scope.Procedure.Amounts().Where(a => ReferenceEquals(a.Place.Part, part));
            foreach (var work in handled.GroupBy(h => (h.Amount.Thing.Value, h.Amount.AtPlace?.Value)))
                if (scope.Fasteners(work.Key.Item1) is { Count: { } count } group)
                {
                    var handlings = work.Select(w => new Handling(w.Place, w.Fact.Word, w.Amount, w.Amount.Count?.Value ?? count.Value));
                    yield return new GroupWork(part, group, work.Key.Item2, count.Value, [.. handlings]);
                }
        }
    }
}
