using System.Collections.Immutable;
using Witnessmark.Language.Text;

namespace Witnessmark.Language.Model;

/// <summary>
/// What was released and which copies are out. Lines are added and never changed, one line an entry, so that two people can add at
/// once and git keeps both. No part of any hash: it is about procedures, not of them.
/// </summary>
public sealed record Register
{
    public static readonly Register Empty = new();

    /// <summary>In the order written.</summary>
    public ImmutableArray<ReleasedVersion> Released { get; init; } = [];

    public ImmutableArray<WithdrawnVersion> Withdrawn { get; init; } = [];

    public ImmutableArray<IssuedCopy> Copies { get; init; } = [];

    public ImmutableArray<EndedCopy> Ended { get; init; } = [];

    /// <summary>When the wrenches and gauges that the tool lists name have to be calibrated again: a new date is no new procedure.</summary>
    public ImmutableArray<CalibratedTool> Calibrated { get; init; } = [];

    public ReleasedVersion? Find(string procedure, string version) => Released.FirstOrDefault(r => r.Procedure.Value == procedure && r.Version.Value == version);

    /// <summary>The version that holds: the one released last that nobody has withdrawn; null when there is none.</summary>
    public ReleasedVersion? InForce(string procedure) =>
        Released.Where(r => r.Procedure.Value == procedure && !IsWithdrawn(r)).OrderBy(r => r.Date.Value, StringComparer.Ordinal).LastOrDefault();

    /// <summary>Every version in the order of release, each once: two clones may have put one text on record.</summary>
    public ImmutableArray<ReleasedVersion> History(string procedure) =>
        [.. Released.Where(r => r.Procedure.Value == procedure).OrderBy(r => r.Date.Value, StringComparer.Ordinal).DistinctBy(r => (r.Version.Value, r.Hash.Value))];

    /// <summary>Null while it may hold.</summary>
    public WithdrawnVersion? Withdrawal(ReleasedVersion version) =>
        Withdrawn.FirstOrDefault(w => w.Procedure.Value == version.Procedure.Value && w.Version.Value == version.Version.Value);

    /// <summary>Whether a file of the workshop is a register, by its path.</summary>
    public static bool IsOne(string path) => path.StartsWith("register", StringComparison.Ordinal) && path.EndsWith(".yaml", StringComparison.Ordinal);

    public bool IsWithdrawn(ReleasedVersion version) => Withdrawal(version) is not null;

    /// <summary>The copy that was issued last with that mark: a mark is given again when the copy that had it has come to its end.</summary>
    public IssuedCopy? Copy(string mark) => Copies.LastOrDefault(c => Same(c.Mark.Value, mark));

    /// <summary>Null while the copy is out.</summary>
    public EndedCopy? End(IssuedCopy copy)
    {
        var earlier = Copies.TakeWhile(c => !ReferenceEquals(c, copy)).Count(c => Same(c.Mark.Value, copy.Mark.Value));
        return Ended.Where(e => Same(e.Mark.Value, copy.Mark.Value)).ElementAtOrDefault(earlier);
    }

    /// <summary>Copies that nobody has brought back or called spoiled.</summary>
    public IEnumerable<IssuedCopy> Out => Copies.Where(c => End(c) is null);

    private static bool Same(string a, string b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);
}

/// <summary>One version as it was released. From here on its number stands for its hash.</summary>
/// <param name="Hash">All 64 digits.</param>
/// <param name="Date">2031-05-03</param>
public sealed record ReleasedVersion(
    Located<string> Procedure, Located<string> Version, Located<string> Hash, Located<string> Date, Located<string> By, ImmutableArray<Located<string>> Approvals, Location At);

public sealed record WithdrawnVersion(Located<string> Procedure, Located<string> Version, Located<string> Date, Located<string> By, Located<string>? Why, Location At);

/// <summary>One printed copy.</summary>
/// <param name="Mark">K7M</param>
/// <param name="Hash">The first twelve digits, as printed, or more.</param>
/// <param name="IssuedAt">2031-06-11T06:40:00+02:00</param>
/// <param name="To">Who got it, when that was said.</param>
public sealed record IssuedCopy(
    Located<string> Mark, Located<string> Procedure, Located<string> Version, Located<string> Hash, Located<string> Unit, Located<string> Serial, Located<string> Place,
    Located<string> IssuedAt, Located<string> By, Located<string>? To, Located<string>? Part, Located<string>? Words, Location At);

public enum CopyEnd
{
    /// <summary>It came back and was received.</summary>
    Returned,

    /// <summary>Torn, oiled, lost, called back: nobody may work from it.</summary>
    Spoiled,
}

public sealed record EndedCopy(Located<string> Mark, CopyEnd End, Located<string> Date, Located<string> By, Located<string>? Why, Location At);

/// <summary>One wrench or gauge on a truck.</summary>
/// <param name="Tool">Its name on the tool list: TW-340.</param>
/// <param name="Number">The number on the tool itself, which tells it from another of its kind.</param>
/// <param name="Due">The day from which it may not be used: 2032-03-14.</param>
public sealed record CalibratedTool(Located<string> Tool, Located<string> Number, Located<string> Due, Located<string> By, Location At);
