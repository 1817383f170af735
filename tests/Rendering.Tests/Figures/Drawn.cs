using Witnessmark.Engineering.Lifting;
using Witnessmark.Rendering.Figures;

namespace Witnessmark.Rendering.Tests.Figures;

/// <summary>The drawing of a case.</summary>
internal static class Drawn
{
    public static string Of(FigureCase said) => said["figure"] switch
    {
        "bolt circle" => Bolts(said),
        "sling" => Sling(said),
        var figure => throw new ArgumentException($"{said.Name}: no figure {figure}"),
    };

    private static string Bolts(FigureCase said)
    {
        var (pitch, flats) = (said.Maybe("pitch-circle"), said.Maybe("across-flats"));
        var ring = new BoltedRing(said.Count("count"), pitch is null ? null : FigureCase.Q(pitch).Number, flats is null ? null : FigureCase.Q(flats).Number, said.Count("passes"), [.. said.Each("inside")]);
        return BoltCircle.Draw(said.Name, ring, said.Words);
    }

    private static string Sling(FigureCase said)
    {
        var (mass, legs) = (FigureCase.Q(said["mass"]), said.Count("legs"));
        var leg = LegLoad.Of(mass, legs, said.Says("angle") ? FigureCase.Q(said["angle"]) : null) ?? throw new ArgumentException($"{said.Name}: no such sling");
        var rated = said.Says("rated") ? FigureCase.Q(said["rated"]) : (Language.Quantities.Quantity?)null;
        return SlingLegs.Draw(said.Name, new HungLoad(said["load"], mass, said.Maybe("weighed") != "no", said["gear"], legs, rated, leg), said.Words);
    }
}
