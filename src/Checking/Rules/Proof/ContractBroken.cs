using Witnessmark.Language.Findings;
using Witnessmark.Proof;

namespace Witnessmark.Checking.Rules.Proof;

/// <summary>What a step requires, what a performed part starts with, or what the end promises is not so on some way.</summary>
public sealed class ContractBroken : IWayRule
{
    public static RuleInfo Info { get; } = new("contract-broken", "Proof", Severity.Fault);

    public static void Check(ProvedWork proved, FindingList findings)
    {
        foreach (var breach in Telling.Sure(proved, BreachKind.Requirement, BreachKind.Contract, BreachKind.Promise))
            findings.Add(
                Info,
                breach.Kind == BreachKind.Promise ? breach.Broken!.At : breach.At.Place.Step.Name.At,
                $"{Found(breach)}",
                "Whoever works from here on trusts that line, and nobody looks again.",
                $"Bring `{Telling.Written(breach)}` about before, on every way that leads here; or say what is so.",
                [.. Telling.Story(breach)]);
    }

    private static string Found(Breach breach) => breach.Kind switch
    {
        BreachKind.Requirement => $"{Telling.Begin(breach.At)} requires `{Telling.Written(breach)}`, and that is not so on every way there.",
        BreachKind.Contract => $"{Telling.Begin(breach.At)} performs what starts with `{Telling.Written(breach)}`, and that is not so on every way there.",
        _ => $"`{Telling.Written(breach)}` is promised at the end, and is not so on every way there; the last step is {Telling.Chain(breach.At)}.",
    };
}
