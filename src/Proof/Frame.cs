using System.Collections.Immutable;
using Witnessmark.Language.Model;

namespace Witnessmark.Proof;

/// <summary>A performed part, or the one that is proved: where it ends early, its own steps rest.</summary>
internal sealed class Frame(Names names, ProcedurePart part, Moment? performedBy, ImmutableArray<string> people, int depth)
{
    public Names Names => names;

    public ProcedurePart Part => part;

    public Moment? PerformedBy => performedBy;

    public ImmutableArray<string> People => people;

    public int Depth => depth;

    /// <summary>Ways on which it is over.</summary>
    public int Done { get; set; } = Ways.No;

    /// <summary>The same, with other names: a turn of a loop.</summary>
    public Frame With(Names turn) => new(turn, part, performedBy, people, depth) { Done = Done };
}
