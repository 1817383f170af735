using System.Collections.Immutable;

namespace Witnessmark.Language.Model;

/// <summary>What a verb makes of a thing, so that no author writes it twice: a tightened group is torqued, a placed device is placed.</summary>
public static class ImpliedValues
{
    private static readonly ImmutableArray<(FactWord Verb, string Value)> All =
    [
        (FactWord.Tighten, "torqued"),
        (FactWord.Snug, "snug"),
        (FactWord.Loosen, "loose"),
        (FactWord.Fit, "fitted"),
        (FactWord.Remove, "removed"),
        (FactWord.Place, "placed"),
        (FactWord.Recover, "stored"),
        (FactWord.Fill, "full"),
        (FactWord.Drain, "drained"),
        (FactWord.Test, "passed"),
    ];

    /// <summary>Null for a verb that changes nothing.</summary>
    public static string? Of(FactWord verb) => All.FirstOrDefault(v => v.Verb == verb).Value;

    /// <summary>Null for a value that no verb brings about.</summary>
    public static FactWord? Verb(string value) => All.Any(v => v.Value == value) ? All.First(v => v.Value == value).Verb : null;
}
