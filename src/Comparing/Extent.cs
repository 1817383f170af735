using System.Collections.Immutable;

namespace Witnessmark.Comparing;

/// <summary>How often a written condition holds: <c>load-on-hook is not none, people in under-hook</c>; a comma is <em>and</em>.</summary>
internal static class Extent
{
    /// <returns>Positive when the new one holds whenever the old one did, and more often; negative the other way round; 0 when neither can be said.</returns>
    public static int Of(string old, string made)
    {
        var (before, after) = (Clauses(old), Clauses(made));
        var signs = before.Keys.Union(after.Keys, StringComparer.Ordinal).Select(k => (before.GetValueOrDefault(k), after.GetValueOrDefault(k)) switch
        {
            // one more thing to be met
            (null, _) => -1,
            (_, null) => 1,
            var (a, b) => k.EndsWith(Not, StringComparison.Ordinal) ? -More(a!, b!) : More(a!, b!),
        }).Where(s => s != 0).Distinct().ToList();
        return signs is [var one] && one != Unlike ? one : 0;
    }

    /// <summary>The same of a list of which one is enough: <c>hub becomes fitted, ring becomes fitted</c>.</summary>
    public static int OfAny(string old, string made) => More(Split(old, ", "), Split(made, ", ")) is var more && more != Unlike ? more : 0;

    private const string Not = " is not";
    private const int Unlike = 2;

    private static int More(ImmutableHashSet<string> old, ImmutableHashSet<string> made) =>
        old.SetEquals(made) ? 0 : made.IsSupersetOf(old) ? 1 : made.IsSubsetOf(old) ? -1 : Unlike;

    /// <summary>Values by the thing that has them.</summary>
    private static Dictionary<string, ImmutableHashSet<string>> Clauses(string text)
    {
        var clauses = new Dictionary<string, ImmutableHashSet<string>>(StringComparer.Ordinal);
        foreach (var clause in text.Split(", "))
        {
            var (thing, values) = Parted(clause);
            clauses[thing] = Split(values, " or ");
        }
        return clauses;
    }

    private static (string Thing, string Values) Parted(string clause)
    {
        foreach (var sign in new[] { " is not ", " = " })
            if (clause.IndexOf(sign, StringComparison.Ordinal) is var at and > 0)
                return (clause[..at] + (sign == " = " ? "" : Not), clause[(at + sign.Length)..]);
        return (clause, "");
    }

    private static ImmutableHashSet<string> Split(string text, string at) => ImmutableHashSet.Create(StringComparer.Ordinal, text.Split(at));
}
