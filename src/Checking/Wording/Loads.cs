using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Checking.Wording;

internal static class Loads
{
    /// <summary>The load that a lift or land handles, as named.</summary>
    public static Located<string>? Named(Fact fact) => fact.Value switch
    {
        Landing landing => landing.Load,
        NameList { Names: [var first, ..] } => first,
        _ => null,
    };

    /// <summary>Whether one person may lift it: its mass is within the limit of the house.</summary>
    public static bool ByHand(Scope scope, Fact fact) =>
        Named(fact) is { } name && scope.Load(name.Value)?.Mass is { } mass
        && mass.Value.Unit.SameKindAs(scope.Library.Workshop.Limits.LiftByHand.Unit)
        && mass.Value.CompareTo(scope.Library.Workshop.Limits.LiftByHand) <= 0;
}
