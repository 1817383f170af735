using System.Collections.Immutable;

namespace Witnessmark.Checking.Rules.Devices;

/// <summary>The rules of this topic.</summary>
internal static class DevicesTopic
{
    public static readonly ImmutableArray<Rule> Rules =
    [
        Rule.OfSheet<BlankTooThin>(),
        Rule.OfSheet<DeviceUnderRated>(),
        Rule.OfSheet<PadTooSmall>(),
        Rule.OfSheet<StandOverloaded>(),
    ];
}
