using Witnessmark.Engineering;
using Witnessmark.Engineering.Lifting;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Devices;

/// <summary>A stand is rated for less than what comes on it when the other wheel end is jacked.</summary>
public sealed class StandOverloaded : ISheetRule
{
    public static RuleInfo Info { get; } = new("stand-overloaded", "Devices", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        // nobody says what stands on a wheel end
        if (machine.Masses.WheelEndStatic is not { } standing || StandLoad.Of(standing.Value, machine.Masses.LoadTransfer?.Value ?? 1) is not { } load)
            return;
        foreach (var device in machine.Devices)
        {
            // not rated for a mass, or none that stands on the ground
            if (device is not { Pad: not null, Rated: { Value.Unit.Kind: "mass" } rated })
                continue;
            // strong enough
            if (rated.Value.CompareTo(load.Mass.Value) >= 0)
                continue;
            findings.Add(new Finding(
                Info,
                rated.At,
                $"{Say.Capital(device.Id.Value)} is rated for {Measures.InBoth(rated.Value)} and gets {Measures.InBoth(load.Mass.Value.ToFigures(4))}.",
                "People are below it. A stand that gives way does so at once.",
                $"Take one that is rated for {load.Mass.Value.ToFigures(4)} or more.")
            {
                Further = [new FurtherPlace(standing.At, "what stands on one wheel end")],
                Worked = [$"on the stand: {load.Mass.Line}"],
            });
        }
    }
}
