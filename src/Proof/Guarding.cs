using System.Collections.Frozen;
using System.Collections.Immutable;
using Witnessmark.Language.Model;

namespace Witnessmark.Proof;

/// <summary>The interlocks of a machine by the thing that sets them off: a step pays only for the rules that speak of what it changes.</summary>
internal sealed class Guarding
{
    public const string SafeStop = "safe stop";
    public const string EndOfStep = "end of step";

    private readonly FrozenDictionary<string, ImmutableArray<Interlock>> _never;
    private readonly FrozenDictionary<string, ImmutableArray<Interlock>> _before;
    private readonly FrozenDictionary<string, ImmutableArray<Interlock>> _inZone;

    private Guarding(Machine machine)
    {
        var never = machine.Interlocks.Where(i => i.NeverWhen is not null).ToList();
        AtStops = [.. never.Where(i => Has(i, SafeStop))];
        AtStepEnds = [.. never.Where(i => Has(i, EndOfStep))];
        var always = never.Except(AtStops).Except(AtStepEnds).ToList();
        _never = ByName(always, i => i.NeverWhen!.All.SelectMany(c => Things(c, machine, 0)));
        _inZone = ByName(always, i => i.NeverWhen!.All.OfType<PeopleClause>().Select(p => p.Zone.Value));
        _before = ByName(machine.Interlocks, i => i.BeforeAny.Select(h => h switch { Becoming b => b.Thing.Value, Testing t => t.Test.Value, _ => "" }));
    }

    private static readonly Once<Machine, Guarding> Kept = new(m => new Guarding(m));

    /// <summary>What must not be when people leave the machine.</summary>
    public ImmutableArray<Interlock> AtStops { get; }

    public ImmutableArray<Interlock> AtStepEnds { get; }

    public static Guarding Of(Machine machine) => Kept.Of(machine);

    /// <summary>Rules that a change of the thing can break.</summary>
    public ImmutableArray<Interlock> Never(string thing) => Or(_never, thing);

    public ImmutableArray<Interlock> NeverIn(string zone) => Or(_inZone, zone);

    /// <summary>Rules that ask for something before the thing changes, or is tested.</summary>
    public ImmutableArray<Interlock> Before(string thing) => Or(_before, thing);

    private static ImmutableArray<Interlock> Or(FrozenDictionary<string, ImmutableArray<Interlock>> rules, string name) => rules.TryGetValue(name, out var found) ? found : [];

    private static bool Has(Interlock rule, string moment) => rule.NeverWhen!.All.Any(c => c is MomentClause m && m.Moment == moment);

    private static FrozenDictionary<string, ImmutableArray<Interlock>> ByName(IEnumerable<Interlock> rules, Func<Interlock, IEnumerable<string>> names) =>
        rules.SelectMany(r => names(r).Distinct(StringComparer.Ordinal).Select(n => (n, r))).GroupBy(p => p.n, StringComparer.Ordinal).ToFrozenDictionary(g => g.Key, g => g.Select(p => p.r).ToImmutableArray(), StringComparer.Ordinal);

    /// <summary>The things that a clause speaks of: kinds of device by their kind.</summary>
    private static IEnumerable<string> Things(Clause clause, Machine machine, int depth) => clause switch
    {
        StateClause s when machine.Openings.Find(s.Thing.Value) is { } opening && depth < 8 =>
            (opening.OpenWhen?.Value.All.SelectMany(c => Things(c, machine, depth + 1)) ?? []).Concat(opening.CoveredBy is { } cover ? [cover.Value] : []),
        StateClause s => [KindOf(s.Thing.Value, machine)],
        DevicesClause d => machine.Devices.Where(k => d.ThatBlock is not { } block || k.Blocks.Any(b => b.Value == block.Value)).Select(k => k.Id.Value),
        BundleClause b when depth < 8 && machine.Conditions.Find(b.Name.Value) is { } bundle => bundle.All.SelectMany(c => c.Value.All).SelectMany(c => Things(c, machine, depth + 1)),
        _ => [],
    };

    private static string KindOf(string thing, Machine machine) => machine.Devices.FirstOrDefault(d => d.Tags.Any(t => t.Value == thing))?.Id.Value ?? thing;
}
