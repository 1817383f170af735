using System.Collections.Immutable;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;

namespace Witnessmark.Language.Model;

/// <summary>A group of bolts or nuts that is tightened as one: count, thread, class, condition and torque.</summary>
public sealed record FastenerGroup(Located<string> Id, DataNode Node) : IItem
{
    public Located<int>? Count { get; init; }

    /// <summary>The kind of place it is at, when not the machine or wheel end: <c>line</c>.</summary>
    public Located<string>? AtEach { get; init; }

    public Located<BoltThread>? Thread { get; init; }

    public Located<Quantity>? Length { get; init; }

    /// <summary>Diameter of the circle through the bolts' centres, when they stand on one.</summary>
    public Located<Quantity>? PitchCircle { get; init; }

    /// <summary>Width of a head across its flats.</summary>
    public Located<Quantity>? AcrossFlats { get; init; }

    /// <summary>Of metric bolts, property class after ISO 898-1: <c>10.9</c>.</summary>
    public Located<string>? PropertyClass { get; init; }

    /// <summary>Of inch bolts, grade after SAE J429: <c>8</c>.</summary>
    public Located<string>? Grade { get; init; }

    /// <summary>What the head is marked with for strength, as it is said behind the thread: <c>10.9</c>, <c>grade 8</c>; null when neither is stated.</summary>
    public string? Strength => PropertyClass?.Value ?? (Grade is { } grade ? $"grade {grade.Value}" : null);

    /// <summary>Of the threads: dry, oiled, paste.</summary>
    public Located<string>? Condition { get; init; }

    /// <summary>Nut factor K of T = K·d·F.</summary>
    public Located<decimal>? NutFactor { get; init; }

    /// <summary>Share of proof load aimed at; null: the house's 0.75.</summary>
    public Located<decimal>? ProofFraction { get; init; }

    public Located<Toleranced>? Torque { get; init; }

    /// <summary>free, inspect or never.</summary>
    public Located<string>? Reuse { get; init; }

    public Located<string>? FitsOneWay { get; init; }

    /// <summary>Own passes; empty: the workshop's.</summary>
    public ImmutableArray<Located<TorquePass>> Passes { get; init; } = [];

    /// <summary>Own order of tightening; empty: the star sequence for the count.</summary>
    public ImmutableArray<Located<int>> Sequence { get; init; } = [];

    public Located<string>? Basis { get; init; }
}

/// <param name="Share">Of the target, 0 to 1.</param>
/// <param name="Circular">Round the circle instead of across.</param>
public readonly record struct TorquePass(decimal Share, bool Circular);
