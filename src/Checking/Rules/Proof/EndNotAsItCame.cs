using Witnessmark.Language.Findings;
using Witnessmark.Proof;

namespace Witnessmark.Checking.Rules.Proof;

/// <summary>A job ends with something that is not as it came, and does not say so.</summary>
public sealed class EndNotAsItCame : IWayRule
{
    public static RuleInfo Info { get; } = new("end-not-as-it-came", "Proof", Severity.Fault);

    public static void Check(ProvedWork proved, FindingList findings)
    {
        foreach (var breach in Telling.Sure(proved, BreachKind.NotNormal))
            findings.Add(
                Info,
                Telling.Cause(breach),
                $"The job ends with {DeclaredThing(breach)} not as it came, on some way; the last step is {Telling.Chain(breach.At)}.",
                "What was taken off is owed back: nobody looks for it once the wheel is on.",
                "Put it back on every way to the end; or say how it is left, with `ends-with:`.",
                [.. Telling.Story(breach)]);
    }

    private static string DeclaredThing(Breach breach) => $"`{breach.Thing}`";
}
