using Witnessmark.Engineering.Lifting;
using Witnessmark.Rendering.Figures;

namespace Witnessmark.Rendering.Tests.Figures;

/// <summary>The drawing of a case.</summary>
internal static class Drawn
{
    public static string Of(FigureCase said) => said["figure"] switch
    {
        "sling" => Sling(said),
        var figure => throw new ArgumentException($"{said.Name}: no figure {figure}"),
    };

    private static string Sling(FigureCase said)
    {
        var (mass, legs) = (FigureCase.Q(said["mass"]), said.Count("legs"));
        var leg = LegLoad.Of(mass, legs, said.Says("angle") ? FigureCase.Q(said["angle"]) : null) ?? throw new ArgumentException($"{said.Name}: no such sling");
        var rated = said.Says("rated") ? FigureCase.Q(said["rated"]) : (Language.Quantities.Quantity?)null;
        return SlingLegs.Draw(said.Name, new HungLoad(said["load"], mass, said.Maybe("weighed") != "no", said["gear"], legs, rated, leg), said.Words);
    }
}
