using Witnessmark.Language.Findings;

namespace Witnessmark.Records.Receiving;

internal static class ReasonInfo
{
    private const string Topic = "Sign-off";

    public static RuleInfo Fault(string name) => new(name, Topic, Severity.Fault);

    public static RuleInfo Query(string name) => new(name, Topic, Severity.Query);
}
