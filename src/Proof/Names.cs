using System.Collections.Frozen;
using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Proof;

/// <summary>What the names in a step stand for: <c>{parameters}</c> are what was given, <c>each</c> is the turn of a loop, a name without a place is where the work is.</summary>
/// <param name="Root">Of the procedure or job that is proved: the machine, and whatever is performed from there.</param>
/// <param name="Own">Of the procedure that the step stands in.</param>
/// <param name="Turn">The place that a loop is at, by its kind.</param>
internal sealed record Names(Scope Root, Scope Own, ImmutableDictionary<string, string> Given, ImmutableDictionary<string, string> Turn)
{
    public const string Hook = "load-on-hook";

    private static readonly Once<Library, FrozenSet<string>> Decided = new(library => library.Procedures
        .SelectMany(p => p.StepFacts()).Select(f => f.Fact).Where(f => f.Word == FactWord.Decide).Select(f => f.Value).OfType<NameList>().SelectMany(n => n.Names).Select(n => n.Value)
        .ToFrozenSet(StringComparer.Ordinal));

    private static readonly ImmutableDictionary<string, string> Nothing = ImmutableDictionary.Create<string, string>(StringComparer.Ordinal);

    public static Names Of(Scope scope) => new(scope, scope, Nothing, Nothing);

    public Machine? Machine => Root.Machine;

    public string Name(string written)
    {
        if (Given.IsEmpty || !written.Contains('{', StringComparison.Ordinal))
            return written;
        foreach (var (name, value) in Given)
            written = written.Replace("{" + name + "}", value, StringComparison.Ordinal);
        return written;
    }

    /// <summary>Names inside a performed part, with what this step gives it; null when nobody knows it.</summary>
    public Names? Into(PerformValue perform)
    {
        var callee = perform.Procedure.Value == "this" ? Own.Procedure : Root.Library.Procedure(perform.Procedure.Value);
        if (callee is null)
            return null;
        var given = perform.Arguments.DistinctBy(a => a.Name.Value).ToImmutableDictionary(a => a.Name.Value, a => Name(a.Value.Value), StringComparer.Ordinal);
        // a group at one joint: all that the part does to the group it does there
        var turn = perform.Arguments.Select(a => a.AtPlace).OfType<Located<string>>().Select(p => Place(p.Value)).Where(p => KindOf(p) is not null).Aggregate(Turn, (t, p) => t.SetItem(KindOf(p)!, p));
        return new Names(Root, new Scope(Root.Library, callee, Root.Machine), given, turn);
    }

    public Names At(string kind, string place) => this with { Turn = Turn.SetItem(kind, place) };

    public bool IsDecision(string thing) => Decided.Of(Root.Library).Contains(thing);

    public DeviceKind? Device(string written) => Own.Device(Name(written)) ?? Root.Device(Name(written));

    /// <summary>Devices of the machine, of the job and of the procedure, all or those that block something.</summary>
    public IEnumerable<DeviceKind> Devices(string? thatBlock) =>
        (Machine?.Devices ?? Items<DeviceKind>.None).Concat(Root.Procedure.Devices).Concat(Own.Procedure.Devices).Distinct().Where(k => thatBlock is null || k.Blocks.Any(b => b.Value == thatBlock));

    /// <summary>The tags that a name of a device stands for: all of a kind, or the one tag.</summary>
    public ImmutableArray<string> Tags(string written)
    {
        var name = Name(written);
        return Device(name) is { } kind && kind.Id.Value == name && !kind.Tags.IsEmpty ? [.. kind.Tags.Select(t => t.Value)] : [name];
    }

    /// <summary>How many there are of a thing that is counted; null when it is one thing.</summary>
    public int? Count(string written) => Name(written) is var name
        ? Root.Fasteners(name)?.Count?.Value ?? Root.Part(name)?.Count?.Value ?? Machine?.States.Find(name)?.Count?.Value
        : null;

    /// <summary>The cells of a thing at a place: one, or one for each place of a kind behind <c>every</c> or <c>any</c>.</summary>
    public ImmutableArray<string> Cells(string thing, string? place)
    {
        var name = Name(thing);
        var kinds = Kinds(name);
        // a pass of a group is no place
        if (place is null || Name(place) is ['{', ..])
            return kinds.IsEmpty ? [name] : Spread(name, kinds, Nothing);
        var at = Name(place);
        var every = at.Split(' ') is ["every" or "any", var kind] ? kind : null;
        if (every is not null)
            return [.. Places(every).SelectMany(p => Spread(name, kinds, Nothing.Add(every, p)))];
        var one = Place(at);
        return KindOf(one) is { } its ? Spread(name, kinds, Nothing.Add(its, one)) : [$"{name} at {one}"];
    }

    /// <summary><c>all engaged</c> is <c>engaged</c>; <c>2 of 6 engaged</c> stays.</summary>
    public static string One(string value) => value.StartsWith("all ", StringComparison.Ordinal) ? value["all ".Length..].TrimStart() : value;

    /// <summary><c>each</c> is where the loop is.</summary>
    public string Place(string written) => Name(written) is var name && name == "each" && !Turn.IsEmpty ? Turn.Values.Last() : name;

    /// <summary>The places that a loop goes through.</summary>
    public ImmutableArray<string> Places(string kind) => [.. Machine?.Places.FirstOrDefault(p => p.Name.Value == kind)?.Names.Select(n => n.Value) ?? []];

    private string? KindOf(string place) => Machine?.Places.FirstOrDefault(p => p.Names.Any(n => n.Value == place))?.Name.Value;

    /// <summary>Kinds of place that a thing is at: a state says so, and a group of bolts.</summary>
    private ImmutableArray<string> Kinds(string name) =>
        Machine?.States.Find(name) is { } state ? [.. state.AtEach.Select(k => k.Value)]
        : Root.Fasteners(name)?.AtEach is { } at ? [at.Value]
        : [];

    /// <summary>At the place that is said, else at the turn of the loop, else where the work is; where nothing says which, at each of them.</summary>
    private ImmutableArray<string> Spread(string name, ImmutableArray<string> kinds, ImmutableDictionary<string, string> said)
    {
        if (kinds.IsEmpty)
            return [said.IsEmpty ? name : $"{name} at {string.Join(' ', said.Values)}"];
        IEnumerable<string> made = [""];
        foreach (var kind in kinds)
        {
            ImmutableArray<string> at = said.TryGetValue(kind, out var one) ? [one] : Turn.TryGetValue(kind, out var turn) ? [turn] : Here(kind) is { } here ? [here] : Places(kind);
            made = made.SelectMany(m => at.Select(p => $"{m} {p}")).ToList();
        }
        return [.. made.Select(m => $"{name} at{m}")];
    }

    /// <summary>The place of the job: positions are alike, so that the first stands for each.</summary>
    private string? Here(string kind)
    {
        var first = Root.Procedure.AppliesTo?.Value.Positions is [var position, ..] ? position.Value : Machine?.Places.FirstOrDefault()?.Names.FirstOrDefault().Value;
        return first is not null && KindOf(first) == kind ? first : null;
    }
}
