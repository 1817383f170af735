using Witnessmark.Engineering.Lifting;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Figures;

namespace Witnessmark.Rendering.Site.Drawings;

/// <summary>The sling of a load that a step lifts, when the data sheet says mass and gear and, with more than one leg, the angle.</summary>
internal static class LiftDrawing
{
    public static IEnumerable<Drawing> Of(SheetStep step, Scope scope, Words words) =>
        (step.Step.Value<NameList>(FactWord.Lift)?.Names ?? [])
            .Select(n => scope.Load(n.Value)).OfType<LoadItem>()
            .Select(l => Hung(l, scope)).OfType<HungLoad>()
            .Select((hung, i) => new Drawing(SlingLegs.Draw(FigureId.Of("sling", step, i), hung, words), words.SlingOf(hung.Load)));

    private static HungLoad? Hung(LoadItem load, Scope scope)
    {
        if (load is not { Mass.Value: { } mass, Gear.Value: { } gearName } || scope.Tool(gearName) is not LiftingGear { Legs.Value: var legs } gear)
            return null;
        return LegLoad.Of(mass, legs, load.Angle?.Value) is { } leg
            ? new HungLoad(DeclaredName.Spoken(load.Id.Value), mass, load.Weighed?.Value != "no", DeclaredName.Spoken(gearName), legs, gear.Rated?.Value, leg)
            : null;
    }
}
