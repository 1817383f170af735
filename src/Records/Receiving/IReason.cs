using Witnessmark.Language.Findings;

namespace Witnessmark.Records.Receiving;

/// <summary>
/// One reason for which a sign-off is not accepted. A fault refuses it, a query keeps it open until somebody has completed
/// it. Each has its page beside it.
/// </summary>
public interface IReason
{
    static abstract RuleInfo Info { get; }

    static abstract void Check(Held held, FindingList findings);
}

/// <summary>A reason in the list. No reflection: the compiler makes each one from its type.</summary>
public sealed class Reason
{
    private readonly Action<Held, FindingList> _check;

    private Reason(RuleInfo info, Action<Held, FindingList> check)
    {
        Info = info;
        _check = check;
    }

    public RuleInfo Info { get; }

    public static Reason Of<T>()
        where T : IReason => new(T.Info, T.Check);

    public void Check(Held held, FindingList findings) => _check(held, findings);
}
