using System.Collections.Immutable;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Records.Receiving.Reasons;

namespace Witnessmark.Records.Receiving;

public enum ReceptionState
{
    /// <summary>A fault: it contradicts what was printed, or itself. It has to be put right on the machine or on paper.</summary>
    Refused,

    /// <summary>Nothing wrong, something missing or to be looked at again.</summary>
    Open,

    /// <summary>Every entry is there, inside its limits and signed.</summary>
    Complete,
}

/// <summary>What became of a sign-off. A single fault refuses: gates are never averaged (domain 4.19).</summary>
/// <param name="Findings">In reading order.</param>
/// <param name="Asked">Entries that the sheet asks for.</param>
/// <param name="Given">Entries of these that are there with every value.</param>
public sealed record ReceptionResult(ReceptionState State, ImmutableArray<Finding> Findings, int Asked, int Given)
{
    /// <summary>Where the version that was worked from is not the one in force: which is, since when. Null where it is.</summary>
    public OutOfForce? Older { get; init; }

    /// <summary>How the work ended before its last step, or at it; null where the sheet has no endings, or none was struck.</summary>
    public WorkEnded? Ended { get; init; }

    public static ReceptionState StateOf(IEnumerable<Finding> findings)
    {
        var worst = findings.Select(f => f.Severity).DefaultIfEmpty(Severity.Remark).Max();
        return worst switch
        {
            Severity.Fault => ReceptionState.Refused,
            Severity.Query => ReceptionState.Open,
            _ => ReceptionState.Complete,
        };
    }
}

/// <summary>Where and how the work ended.</summary>
public sealed record WorkEnded(string Step, EndingValue How);

/// <summary>Holds a sign-off against the sheet that it was typed from.</summary>
public static class Reception
{
    /// <param name="released">Hashes of versions that are not in the library any more; may be empty.</param>
    /// <exception cref="InvalidOperationException">Nothing can be hashed on this machine: see <see cref="Hashing.ProcedureHash"/>.</exception>
    public static ReceptionResult Hold(SignOff signOff, Library library, ImmutableArray<ReleasedHash> released)
    {
        var held = Held.Of(signOff, library, released);
        var findings = new FindingList();
        foreach (var reason in ReasonSet.Identity)
            reason.Check(held, findings);
        // against another version's sheet every entry would look wrong: one cause, said once
        if (held.Plan is not null && ReceptionResult.StateOf(findings.InReadingOrder()) != ReceptionState.Refused)
            foreach (var reason in ReasonSet.Entries)
                reason.Check(held, findings);
        var found = findings.InReadingOrder();
        return new ReceptionResult(ReceptionResult.StateOf(found), found, held.Required.Count(), held.Required.Count(a => EntryValueMissing.IsGiven(held, a)))
        {
            Ended = Endings.OfAll(held) is { } end ? new WorkEnded(end.Asked.Step.Code.Plain, end.Asked.Step.Step.Value<EndingValue>(FactWord.End)!) : null,
            Older = held.SignOff.Hash is { } typed && held.Hash?.IsBegunBy(typed.Value) == true ? held.Older : null,
        };
    }
}
