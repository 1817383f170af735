using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;

namespace Witnessmark.Reading.Sheets;

/// <summary>What hangs on the hook, and what runs out.</summary>
internal static class LoadsAndSpaces
{
    public static Items<LoadItem> Loads(Fields sheet)
    {
        var loads = new Items<LoadItem>(sheet.Each("loads", "{mass: 43 kg, weighed: yes, gear: sling-2leg}", Load));
        MachineMasses(sheet);
        return loads;
    }

    public static Items<FluidSpace> Spaces(Fields sheet) => new(sheet.Each("spaces", "{fluid: gear oil, holds: 8.5 L}", Space));

    /// <summary>Masses for jack and stand: read, so that a slip is found; kept in the node until a rule works with them.</summary>
    private static void MachineMasses(Fields sheet)
    {
        if (sheet.Below("machine-masses", "machine-masses", "{wheel-end-static: 3550 kg}") is not { } masses)
            return;
        masses.Quantity("wheel-end-static", "3550 kg", "mass");
        masses.Quantity("empty", "27400 kg", "mass");
        masses.Quantity("gross", "61400 kg", "mass");
        masses.Number("load-transfer", "1.5");
        masses.Done();
    }

    private static LoadItem Load(Located<string> id, Fields load)
    {
        var item = new LoadItem(id, load.Map)
        {
            Mass = load.Quantity("mass", "43 kg", "mass"),
            Weighed = load.OneOf("weighed", "yes", "no"),
            Gear = load.Name("gear", "sling-2leg"),
            Angle = load.Quantity("angle", "60 deg", "angle"),
            Radius = load.Quantity("radius", "4.0 m", "length"),
            ByHand = load.Text("by-hand", "one person"),
        };
        load.Needs("mass");
        return item;
    }

    private static FluidSpace Space(Located<string> id, Fields space) => new(id, space.Map)
    {
        Fluid = space.Text("fluid", "gear oil"),
        Holds = space.Quantity("holds", "8.5 L", "volume"),
        DrainsInto = space.Name("drains-into", "T1"),
        FullWhen = space.Text("full-when", "oil stands at the level plug"),
    };
}
