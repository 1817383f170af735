using Witnessmark.Language.Findings;
using Witnessmark.Proof;

namespace Witnessmark.Checking.Rules.Proof;

/// <summary>A temporary device goes in twice, comes out without being in, or stays in.</summary>
public sealed class DeviceAstray : IWayRule
{
    public static RuleInfo Info { get; } = new("device-astray", "Proof", Severity.Fault);

    public static void Check(ProvedWork proved, FindingList findings)
    {
        foreach (var breach in Telling.Sure(proved, BreachKind.PlacedTwice, BreachKind.NotPlaced, BreachKind.LeftIn))
            findings.Add(
                Info,
                breach.Kind == BreachKind.LeftIn ? Telling.Cause(breach) : breach.At.Place.Step.Name.At,
                breach.Kind switch
                {
                    BreachKind.PlacedTwice => $"{Telling.Begin(breach.At)} places {breach.Thing}, which is in already on some way.",
                    BreachKind.NotPlaced => $"{Telling.Begin(breach.At)} takes {breach.Thing} out, which is not in on some way.",
                    _ => $"{breach.Thing} is still in when {Telling.Chain(breach.At)} is done, on some way, and the end does not say so.",
                },
                "A device that is in and on no list is found by whoever starts the machine.",
                breach.Kind == BreachKind.LeftIn ? $"Take it out on every way to the end; or hand it over: `ends-with: {breach.Thing} = placed`." : "Let it go in once and come out once on every way.",
                [.. Telling.Story(breach)]);
    }
}
