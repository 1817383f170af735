using System.Collections.Immutable;
using Witnessmark.Language.Text;

namespace Witnessmark.Comparing;

/// <summary>What a change can do, weakest first. The highest of all changes is the class of a comparison.</summary>
public enum ChangeClass
{
    /// <summary>Nothing differs.</summary>
    None,

    /// <summary>Only how it is written: the hash is the same.</summary>
    Layout,

    /// <summary>Words, and nobody does anything otherwise.</summary>
    Wording,

    /// <summary>Order, tool, time, people: the work goes otherwise, with the same limits.</summary>
    Method,

    /// <summary>A torque, count, order, facing, limit, message, hold point, verifier, device or load: what can hurt people or wreck the machine.</summary>
    Hazard,
}

/// <summary>Which way a limit or a demand has moved.</summary>
public enum Sense
{
    /// <summary>There is no stricter and no milder side: a torque is another torque.</summary>
    Other,

    /// <summary>Less passes than before.</summary>
    Tighter,

    /// <summary>More passes than before: to be looked at first.</summary>
    Looser,
}

/// <summary>One thing that differs.</summary>
/// <param name="Where">For people: <c>step 16 Tighten the ring</c>, <c>okr-34, backing-ring-bolts</c>.</param>
/// <param name="What">What it is of that place: torque, checked-by, message.</param>
/// <param name="Old">Null when it was not there.</param>
/// <param name="New">Null when it is gone.</param>
public sealed record Change(ChangeClass Class, string Where, string What, string? Old, string? New)
{
    public Sense Sense { get; init; }

    /// <summary>Of a number, new against old: 0.04 is 4 % more. Null where there is no one number.</summary>
    public decimal? Share { get; init; }

    /// <summary>Why it has its class when that does not show: <c>the word "not" is gone</c>.</summary>
    public string? Because { get; init; }

    /// <summary>Declared hazards that the place is under.</summary>
    public ImmutableArray<string> Hazards { get; init; } = [];

    /// <summary>Arithmetic that comes out otherwise, before and after.</summary>
    public ImmutableArray<(string What, string? Old, string? New)> Worked { get; init; } = [];

    /// <summary>The common part that it was found in, when it is told of a procedure that performs that part.</summary>
    public string? Through { get; init; }

    public Location? OldAt { get; init; }

    public Location? NewAt { get; init; }
}

/// <summary>One procedure in both states.</summary>
/// <param name="Old">Null when it is new.</param>
/// <param name="New">Null when it is gone.</param>
/// <param name="Changes">Highest class first, then in the order of the text.</param>
public sealed record ProcedureComparison(string Id, ComparedVersion? Old, ComparedVersion? New, ImmutableArray<Change> Changes)
{
    public ChangeClass Class { get; init; } = Changes.Select(c => c.Class).DefaultIfEmpty(ChangeClass.None).Max();

    /// <summary>The newer state beside the version that was released last, where that is another one than the older state: small drifts add up there.</summary>
    public ProcedureComparison? SinceRelease { get; init; }
}

/// <param name="Hash">All 64 digits.</param>
public sealed record ComparedVersion(string Version, string Hash, string Title);

/// <summary>Two states of a workshop.</summary>
/// <param name="Procedures">Those that differ, by id.</param>
/// <param name="House">What no one procedure owns: the house's limits and people, interlocks and whatever else of a data sheet or tool list no changed procedure tells, translations.</param>
public sealed record WorkshopComparison(ImmutableArray<ProcedureComparison> Procedures, ImmutableArray<Change> House)
{
    public ChangeClass Class => Procedures.Select(p => p.Class).Concat(House.Select(c => c.Class)).DefaultIfEmpty(ChangeClass.None).Max();

    /// <summary>All that differs, as an auditor has to look at it.</summary>
    public IEnumerable<Change> InReadingOrder => ReadingOrder.Of([.. Procedures.SelectMany(p => p.Changes), .. House]);
}
