using System.Collections.Immutable;

namespace Witnessmark.Checking.Rules.Fluids;

/// <summary>The rules of this topic.</summary>
internal static class FluidsTopic
{
    public static readonly ImmutableArray<Rule> Rules =
    [
        Rule.Of<ContainerForOtherFluid>(),
        Rule.Of<ContainerTooSmall>(),
        Rule.Of<ContainerUnlabelled>(),
        Rule.Of<PumpForOtherFluid>(),
    ];
}
