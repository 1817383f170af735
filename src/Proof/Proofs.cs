using System.Collections.Immutable;
using Witnessmark.Language.Model;

namespace Witnessmark.Proof;

/// <summary>
/// The proof of a procedure or job: each of its parts followed on every way through it, with what the machine forbids held against every
/// change. What a part does not say of its start is not known, and asked for only where a rule needs it.
/// </summary>
public static class Proofs
{
    private static readonly Once<Scope, ImmutableArray<PartProof>> Proved = new(scope => [.. scope.Procedure.Parts.Select(p => Walk.Prove(scope, p))]);

    public static ImmutableArray<PartProof> Of(Scope scope) => Proved.Of(scope);
}
