using System.Collections.Immutable;
using Witnessmark.Language.Text;

namespace Witnessmark.Language.Model;

/// <summary>Clauses that all hold: a comma is <em>and</em>.</summary>
public sealed record Condition(ImmutableArray<Clause> All, Location At)
{
    /// <summary>Whether all clauses hold, by what <paramref name="told"/> says of each; null when that is not known.</summary>
    public bool? Holds(Func<Clause, bool?> told)
    {
        var clauses = All.Select(told).ToList();
        return clauses.Contains(false) ? false : clauses.Contains(null) ? null : true;
    }
}

public abstract record Clause(Location At);

/// <summary><c>thing [at place] = value [or value]</c>, or <c>… is not value</c>.</summary>
public sealed record StateClause(Located<string> Thing, Located<string>? AtPlace, bool Negated, ImmutableArray<Located<string>> Values, Location At) : Clause(At)
{
    /// <summary>Whether it holds when the thing has this value.</summary>
    public bool HoldsAt(string value) => Values.Any(v => v.Value == value) != Negated;
}

/// <summary>A bundle declared under <c>conditions:</c>, by its name alone.</summary>
public sealed record BundleClause(Located<string> Name) : Clause(Name.At);

/// <summary><c>people in zone</c></summary>
public sealed record PeopleClause(Located<string> Zone, Location At) : Clause(At);

/// <summary><c>every device [that blocks x] = placed or stored</c></summary>
public sealed record DevicesClause(bool Every, Located<string>? ThatBlock, Located<string> Value, Location At) : Clause(At);

/// <summary><c>safe stop</c>, <c>end of step</c></summary>
public sealed record MomentClause(string Moment, Location At) : Clause(At);
