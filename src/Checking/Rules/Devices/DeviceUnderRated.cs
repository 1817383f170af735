using Witnessmark.Checking.Wording;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Devices;

/// <summary>A cap, blank or prop is rated for less than what it holds against.</summary>
public sealed class DeviceUnderRated : ISheetRule
{
    public static RuleInfo Info { get; } = new("device-under-rated", "Devices", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var device in machine.Devices)
        {
            // not rated, or nothing of the same kind said that it holds against
            if (device is not { Rated: { } rated, Against: { } against } || device.Against.Number(rated.Value.Unit.Kind) is not { } load)
                continue;
            // strong enough
            if (rated.Value.CompareTo(load) >= 0)
                continue;
            findings.Add(
                Info,
                rated.At,
                $"{Say.Capital(device.Id.Value)} is rated for {Measures.InBoth(rated.Value)} and holds against {Measures.InBoth(load)}.",
                "What is weaker than the pressure behind it flies off or bursts, at the face of whoever works there.",
                $"Take one that is rated for {load} or more, or prove on the data sheet that less comes on it.",
                new FurtherPlace(against.At, "what it holds against"));
        }
    }
}
