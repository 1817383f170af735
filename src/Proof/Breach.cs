using System.Collections.Immutable;
using Witnessmark.Language.Model;

namespace Witnessmark.Proof;

public enum BreachKind
{
    /// <summary>A rule of the machine is broken.</summary>
    Interlock,

    /// <summary>A step asks for something by <c>requires</c> that is not so.</summary>
    Requirement,

    /// <summary>What is performed starts with something that is not so.</summary>
    Contract,

    /// <summary>The end is not what <c>ends-with</c> promises.</summary>
    Promise,

    /// <summary>A device goes in that is in already.</summary>
    PlacedTwice,

    /// <summary>A device comes out that is not in.</summary>
    NotPlaced,

    /// <summary>A device is still in at an end that does not name it.</summary>
    LeftIn,

    /// <summary>A job ends with something that is not as it came.</summary>
    NotNormal,
}

/// <summary>Something that can go wrong on some way through the work.</summary>
/// <param name="At">The step at which it does.</param>
/// <param name="Broken">What should hold and does not, or must never hold and does; null where the kind says it.</param>
/// <param name="Thing">The cell that it is about, where it is about one: a tag, <c>cooling-line at CL A</c>.</param>
/// <param name="Sure">False when nobody says how it is: it may hold.</param>
/// <param name="Story">The steps that bring the machine there, in order, with what each has made of it.</param>
public sealed record Breach(BreachKind Kind, Moment At, Interlock? Rule, Clause? Broken, string? Thing, bool Sure, ImmutableArray<StoryLine> Story);

/// <summary>One step of the story.</summary>
/// <param name="Said"><c>axle-slope = in-window</c>, <c>B1 = placed</c>.</param>
public sealed record StoryLine(Moment At, string Said);

/// <summary>What following a part on all its ways has shown.</summary>
/// <param name="TooManyWays">The work branches in more ways than can be followed: then nothing is proved.</param>
public sealed record PartProof(ProcedurePart Part, ImmutableArray<Breach> Breaches, ImmutableArray<StopPoint> Points, bool TooManyWays);
