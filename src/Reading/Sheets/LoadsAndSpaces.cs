using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;
using Witnessmark.Reading.Shapes;

namespace Witnessmark.Reading.Sheets;

/// <summary>What hangs on the hook, and what runs out.</summary>
internal static class LoadsAndSpaces
{
    private static readonly Shape LoadShape = new(
        "load",
        "a load",
        Row.Quantity("mass", "43 kg", "what the hook carries", "mass").Must,
        Row.YesNo("weighed", "whether somebody weighed it"),
        Row.Name("gear", "sling-2leg", "what it hangs in"),
        Row.Quantity("angle", "60 deg", "between a leg and the horizontal", "angle").OrZero,
        Row.Quantity("radius", "4.0 m", "from the crane's slewing axis to the hook", "length"),
        Row.Text("by-hand", "one person", "who carries it where no crane does"),
        Row.Basis);

    private static readonly Shape SpaceShape = new(
        "space",
        "a space",
        Row.Text("fluid", "gear oil", "what is in it"),
        Row.Quantity("holds", "8.5 L", "how much", "volume"),
        Row.Name("drains-into", "T1", "the container that takes it"),
        Row.Text("full-when", "oil stands at the level plug", "how one sees that it is full"),
        Row.Basis);

    private static readonly Shape MassesShape = new(
        "machine-masses",
        "machine-masses",
        Row.Quantity("wheel-end-static", "3550 kg", "what stands on one wheel end", "mass"),
        Row.Quantity("empty", "27400 kg", "the machine empty", "mass"),
        Row.Quantity("gross", "61400 kg", "the machine loaded", "mass"),
        Row.Factor("load-transfer", "1.5", "by what a wheel end carries more while the other is jacked"));

    public static readonly Row Loads = Row.Each("loads", LoadShape, "{mass: 43 kg, weighed: yes, gear: sling-2leg}", "what is lifted");

    public static readonly Row Spaces = Row.Each("spaces", SpaceShape, "{fluid: gear oil, holds: 8.5 L}", "what is drained and filled");

    public static readonly Row Masses = Row.Below("machine-masses", MassesShape, "{wheel-end-static: 3550 kg}", "masses for jack and stand");

    public static Items<LoadItem> ReadLoads(Fields sheet) => new(sheet.Each(Loads.Key, Load));

    public static Items<FluidSpace> ReadSpaces(Fields sheet) => new(sheet.Each(Spaces.Key, Space));

    public static MachineMasses ReadMasses(Fields sheet) => sheet.Below(Masses.Key) is { } masses
        ? new MachineMasses(masses.Quantity("wheel-end-static"), masses.Factor("load-transfer"))
        : MachineMasses.Unknown;

    private static LoadItem Load(Located<string> id, Fields load) => new(id, load.Map)
    {
        Mass = load.Quantity("mass"),
        Weighed = load.Text("weighed"),
        Gear = load.Text("gear"),
        Angle = load.Quantity("angle"),
        Radius = load.Quantity("radius"),
        ByHand = load.Text("by-hand"),
    };

    private static FluidSpace Space(Located<string> id, Fields space) => new(id, space.Map)
    {
        Fluid = space.Text("fluid"),
        Holds = space.Quantity("holds"),
        DrainsInto = space.Text("drains-into"),
        FullWhen = space.Text("full-when"),
    };
}
