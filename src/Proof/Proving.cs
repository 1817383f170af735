using System.Collections.Immutable;
using Witnessmark.Language.Model;

namespace Witnessmark.Proof;

/// <summary>All that one proof works with.</summary>
internal sealed class Proving
{
    public Proving(Scope scope)
    {
        Situation = new Situation(Ways, Worths);
        Breaches = new Breaches(Situation, Ways, Worths);
        Guarding = scope.Machine is { } machine ? Guarding.Of(machine) : null;
        Work = new Work(Situation, Ways, Worths, Breaches, Guarding);
    }

    public Ways Ways { get; } = new();

    public Worths Worths { get; } = new();

    public Situation Situation { get; }

    public Breaches Breaches { get; }

    public Guarding? Guarding { get; }

    public Work Work { get; }

    public Asking Asking(Names names, string? moment = null) => new(Situation, Ways, Worths, names, ImmutableArray<string>.Empty, moment);

    /// <summary>A condition, settled for each way: where nobody knows, on some ways it holds and on others not.</summary>
    public int Settled(Condition condition, Asking asking, Moment? at) => Situation.Settled(asking.Holds(condition), at, condition.At.Text);
}
