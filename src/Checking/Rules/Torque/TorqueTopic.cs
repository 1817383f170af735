using System.Collections.Immutable;

namespace Witnessmark.Checking.Rules.Torque;

/// <summary>The rules of this topic.</summary>
internal static class TorqueTopic
{
    public static readonly ImmutableArray<Rule> Rules =
    [
        Rule.OfSheet<FrictionAgainstCondition>(),
        Rule.OfSheet<FrictionNotStated>(),
        Rule.OfSheet<NumberWithoutBasis>(),
        Rule.OfSheet<PreloadPastProof>(),
        Rule.OfSheet<TightenedWithoutTorque>(),
        Rule.OfSheet<ToleranceTooWide>(),
        Rule.OfSheet<TorqueAboveWindow>(),
        Rule.OfSheet<TorqueBelowWindow>(),
        Rule.OfSheet<TorqueMissesAim>(),
        Rule.OfSheet<TorqueUnitSlip>(),
        Rule.OfSheet<TorqueWithoutTolerance>(),
        Rule.OfSheet<UnitsDisagree>(),
    ];
}
