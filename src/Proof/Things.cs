using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Proof;

/// <summary>What names in a step stand for: <c>{parameters}</c> are what was given, and a place by <c>every</c> is each of its kind.</summary>
internal sealed record Things(Scope Root, Scope Own, ImmutableDictionary<string, string> Given)
{
    public const string Hook = "load-on-hook";

    public static Things Of(Scope scope) => new(scope, scope, ImmutableDictionary<string, string>.Empty);

    public Machine? Machine => Root.Machine;

    public string Name(string written)
    {
        foreach (var (name, value) in Given)
            written = written.Replace("{" + name + "}", value, StringComparison.Ordinal);
        return written;
    }

    /// <summary>Names inside a performed part, with what this step gives it; null when it is not known.</summary>
    public Things? Into(PerformValue perform)
    {
        var callee = perform.Procedure.Value == "this" ? Own.Procedure : Root.Library.Procedure(perform.Procedure.Value);
        return callee is null
            ? null
            : new Things(Root, new Scope(Root.Library, callee, Root.Machine), perform.Arguments.DistinctBy(a => a.Name.Value)
                .ToImmutableDictionary(a => a.Name.Value, a => Name(a.Value.Value)));
    }

    public DeviceKind? Device(string written) => Own.Device(Name(written)) ?? Root.Device(Name(written));

    /// <summary>The tags that a name of a device stands for: all of a kind, or the one tag.</summary>
    public ImmutableArray<string> Tags(DeviceKind kind, string written) =>
        Name(written) is var name && kind.Id.Value != name ? [name]
        : kind.Tags.IsEmpty ? [name]
        : [.. kind.Tags.Select(t => t.Value)];

    /// <summary>How many there are of a thing that is counted; null when it is one thing.</summary>
    public int? Count(string written) => Name(written) is var name
        ? Root.Fasteners(name)?.Count?.Value ?? Root.Part(name)?.Count?.Value ?? Machine?.States.Find(name)?.Count?.Value
        : null;

    /// <summary>The cells that a thing at a place has: one, or one for each place of a kind behind <c>every</c>, <c>any</c> or <c>each</c>.</summary>
    public ImmutableArray<string> Cells(Located<string> thing, Located<string>? place)
    {
        var name = Name(thing.Value);
        if (place is null)
            return [name];
        var at = Name(place.Value.Value);
        var kind = at.StartsWith("every ", StringComparison.Ordinal) ? at["every ".Length..] : at.StartsWith("any ", StringComparison.Ordinal) ? at["any ".Length..] : null;
        return kind is not null && Machine?.Places.FirstOrDefault(p => p.Name.Value == kind) is { } places
            ? [.. places.Names.Select(p => $"{name} at {p.Value}")]
            : [$"{name} at {at}"];
    }

    /// <summary><c>all engaged</c> is <c>engaged</c>; <c>2 of 6 engaged</c> stays.</summary>
    public static string Value(string written) => written.StartsWith("all ", StringComparison.Ordinal) ? written["all ".Length..].TrimStart() : written;
}
