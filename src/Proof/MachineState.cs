using System.Collections.Immutable;

namespace Witnessmark.Proof;

/// <summary>
/// What is known of a machine at one point of the work. A thing that is not in it may have any value; a thing that a path has
/// changed and another has not has the values of both.
/// </summary>
/// <param name="Known">Values a thing can have, by its name, or by name and place: <c>cooling-line at A</c>.</param>
public sealed record MachineState(ImmutableDictionary<string, ImmutableSortedSet<string>> Known)
{
    public static readonly MachineState Unknown = new(ImmutableDictionary.Create<string, ImmutableSortedSet<string>>(StringComparer.Ordinal));

    /// <summary>Null when it may have any value.</summary>
    public ImmutableSortedSet<string>? Of(string thing) => Known.GetValueOrDefault(thing);

    public MachineState With(string thing, params ReadOnlySpan<string> values) =>
        new(Known.SetItem(thing, [.. values]));

    /// <summary>What is known when either is so: after work that is done only under a condition.</summary>
    public MachineState Or(MachineState other)
    {
        if (ReferenceEquals(this, other))
            return this;
        var both = Unknown.Known.ToBuilder();
        foreach (var (thing, values) in Known)
            if (other.Known.TryGetValue(thing, out var others))
                both[thing] = values.Union(others);
        return new MachineState(both.ToImmutable());
    }

    public bool Equals(MachineState? other) =>
        other is not null && Known.Count == other.Known.Count
        && Known.All(k => other.Known.TryGetValue(k.Key, out var values) && values.SetEquals(k.Value));

    public override int GetHashCode() => Known.Count;
}
