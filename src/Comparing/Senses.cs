using System.Collections.Frozen;
using Witnessmark.Language.Text;

namespace Witnessmark.Comparing;

/// <summary>Which way a declared thing has moved, by its key: what the strict side of each is. Common practice, no source.</summary>
internal static class Senses
{
    /// <summary>Of which a greater value lets more through.</summary>
    private static readonly FrozenSet<string> GreaterIsLooser = FrozenSet.ToFrozenSet(
        ["tightened-proof", "friction-scatter", "wrench-scatter", "dual-units", "lift-by-hand", "crane-use", "container-fill", "step-words", "steps-in-section", "shift",
         "most-pieces", "at-most", "resolution", "scale", "rated", "chart", "radius", "oil-balance", "interruption"]);

    private static readonly FrozenSet<string> GreaterIsTighter = FrozenSet.ToFrozenSet(
        ["sling-angle", "margin", "worn-at", "points", "pressure", "hold", "settle", "mass", "estimated-mass-factor", "blank-safety", "zones"]);

    /// <summary>What asks, guards or is known: gone is looser, and so is a list of fewer.</summary>
    private static readonly FrozenSet<string> Guards = FrozenSet.ToFrozenSet(
        ["tags", "blocks", "controls", "met-by", "covered-by", "open-when", "lost-when", "lost-after", "proved-by", "zone", "bands", "worn-at", "clearance", "plausible", "accept", "mass", "weighed",
         "gauge", "requires", "has", "owes", "prove-again", "never", "before", "every", "after", "in-training", "released-needs", "hazard-needs", "readings", "calibrated", "count", "outside",
         "limits", "rated", "conditions", "points", "of", "passes", "needs", "faced-side", "fits-one-way", "call", "answer", "interlocks", "hazards", "openings", "zones", "devices"]);

    /// <summary>Keys under which a wider condition catches more.</summary>
    private static readonly FrozenSet<string> Catching = FrozenSet.ToFrozenSet(["never", "when", "open-when"]);

    /// <summary>Keys that name happenings, of which one is enough.</summary>
    private static readonly FrozenSet<string> Happenings = FrozenSet.ToFrozenSet(["before", "every", "after"]);

    /// <summary>Keys under which a wider condition asks less.</summary>
    private static readonly FrozenSet<string> Asking = FrozenSet.ToFrozenSet(["requires", "has", "owes", "prove-again", "passes"]);

    /// <summary>Words of one key, mildest first.</summary>
    private static readonly FrozenDictionary<string, string[]> Ranks = new Dictionary<string, string[]>(StringComparer.Ordinal)
    {
        ["severity"] = ["property", "minor", "serious", "death"],
        ["if-ignored"] = ["could", "will"],
        ["reuse"] = ["free", "inspect", "never"],
        ["calibrated"] = ["no", "yes"],
        ["weighed"] = ["no", "yes"],
    }.ToFrozenDictionary(StringComparer.Ordinal);

    public static Sense Of(string key, DataNode? old, DataNode? made, decimal? share) => (old, made) switch
    {
        (null, _) => Guards.Contains(key) ? Sense.Tighter : Sense.Other,
        (_, null) => Guards.Contains(key) ? Sense.Looser : Sense.Other,
        (DataList a, DataList b) when Guards.Contains(key) => Of(a, b),
        (DataText a, DataText b) => Of(key, a.Text, b.Text, share),
        _ => Sense.Other,
    };

    /// <summary>The other side.</summary>
    public static Sense Turned(Sense sense) => sense switch
    {
        Sense.Looser => Sense.Tighter,
        Sense.Tighter => Sense.Looser,
        _ => sense,
    };

    /// <param name="way">Positive is tighter.</param>
    public static Sense Of(int way) => way > 0 ? Sense.Tighter : way < 0 ? Sense.Looser : Sense.Other;

    private static Sense Of(string key, string old, string made, decimal? share)
    {
        if (Ranks.GetValueOrDefault(key) is { } rank && Array.IndexOf(rank, old) is var from and >= 0 && Array.IndexOf(rank, made) is var to and >= 0)
            return Of(to.CompareTo(from));
        if (Catching.Contains(key))
            return Of(Extent.Of(old, made));
        if (Happenings.Contains(key))
            return Of(Extent.OfAny(old, made));
        if (Asking.Contains(key))
            return Of(-Extent.Of(old, made));
        return share is null or 0 ? Sense.Other
            : GreaterIsLooser.Contains(key) ? Of(-Math.Sign(share.Value))
            : GreaterIsTighter.Contains(key) ? Of(Math.Sign(share.Value))
            : Sense.Other;
    }

    private static Sense Of(DataList old, DataList made)
    {
        var (before, after) = (Texts(old), Texts(made));
        return before.IsProperSubsetOf(after) ? Sense.Tighter : after.IsProperSubsetOf(before) ? Sense.Looser : Sense.Other;
    }

    private static HashSet<string> Texts(DataList list) => list.Items.Select(i => i is DataText text ? text.Text : i.At.Text).ToHashSet(StringComparer.Ordinal);
}
