using System.Collections.Immutable;
using Witnessmark.Language.Model;

namespace Witnessmark.Comparing;

/// <summary>Two steps that are one step in two versions.</summary>
/// <param name="Likeness">From 0 to 1; 1 when the name is the same.</param>
/// <param name="ByWas">The author said so.</param>
internal sealed record StepMatch(StepInPlace Old, StepInPlace New, double Likeness, bool ByWas);

/// <summary>Which step was which: by name, by <c>was:</c>, then by likeness. Never two to one.</summary>
internal sealed record StepMatches(ImmutableArray<StepMatch> Matched, ImmutableArray<StepInPlace> Gone, ImmutableArray<StepInPlace> Come)
{
    /// <summary>Less alike than this, and it is one step gone and another come.</summary>
    private const double Floor = 0.45;

    public static StepMatches Between(Procedure old, Procedure made)
    {
        var (before, after) = (old.Walk().ToList(), made.Walk().ToList());
        var found = new List<StepMatch>();
        Pair(before, after, found, Place, Place);
        Pair(before, after, found, p => p.Step.Slug, Was, byWas: true);
        Pair(before, after, found, p => p.Step.Slug, p => p.Step.Slug);
        Alike(before, after, found);
        return new StepMatches([.. found.OrderBy(m => m.New.Step.Number)], [.. before], [.. after]);
    }

    private static string Place(StepInPlace place) => $"{place.Part.Name?.Value}/{place.Section.Heading?.Value}/{place.Step.Slug}";

    private static string? Was(StepInPlace place) => place.Step.Find(FactWord.Was)?.Value is NameList { Names: [var name, ..] } ? name.Value : null;

    /// <summary>Pairs what has one key, where the key stands once on either side.</summary>
    private static void Pair(List<StepInPlace> before, List<StepInPlace> after, List<StepMatch> found, Func<StepInPlace, string> oldKey, Func<StepInPlace, string?> newKey, bool byWas = false)
    {
        var old = before.ToLookup(oldKey, StringComparer.Ordinal);
        foreach (var made in after.GroupBy(newKey, StringComparer.Ordinal).Where(g => g.Key is not null && g.Count() == 1).Select(g => (g.Key, Place: g.Single())).ToList())
            if (old[made.Key!].ToList() is [var same])
            {
                found.Add(new StepMatch(same, made.Place, byWas ? StepLikeness.Of(same.Step, made.Place.Step) : 1, byWas));
                before.Remove(same);
                after.Remove(made.Place);
            }
    }

    private static void Alike(List<StepInPlace> before, List<StepInPlace> after, List<StepMatch> found)
    {
        var pairs = before.SelectMany(o => after.Select(n => (Old: o, New: n, Likeness: StepLikeness.Of(o.Step, n.Step)))).Where(p => p.Likeness >= Floor);
        foreach (var (old, made, likeness) in pairs.OrderByDescending(p => p.Likeness).ThenBy(p => p.New.Step.Number).ToList())
            if (before.Contains(old) && after.Contains(made))
            {
                found.Add(new StepMatch(old, made, likeness, ByWas: false));
                before.Remove(old);
                after.Remove(made);
            }
    }
}
