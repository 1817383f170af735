using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;
using Witnessmark.Reading.Shapes;

namespace Witnessmark.Reading.Sheets;

/// <summary>A machine's data sheet: what its procedures share.</summary>
internal static class MachineSheet
{
    public const string Key = "machine";

    public static readonly Shape Shape = new(
        "machine",
        "the data sheet",
        Row.Id(Key, "okr-34", "its name").Must,
        Row.Text("title", "OKR-34 articulated hauler", "what people call it"),
        Row.Text("basis", "OKR-34 data sheet 7 rev C", "where the numbers come from"),
        Row.Written("serials", SerialsReader.Form, "from 0200", "serial numbers that it holds for"),
        PlacesAndStates.Places,
        PlacesAndStates.Zones,
        PlacesAndStates.States,
        PlacesAndStates.Conditions,
        InterlockReader.Section,
        InterlockReader.OpeningSection,
        HazardReader.Section,
        DeviceReader.Section,
        FastenerReader.Section,
        PartReader.Section,
        StackReader.Section,
        LoadsAndSpaces.Spaces,
        LoadsAndSpaces.Loads,
        LoadsAndSpaces.Masses,
        ShimReader.Section,
        MeasuringReader.Readings,
        MeasuringReader.Values,
        TestReader.Section);

    /// <summary>The sheet, or null when it has no name.</summary>
    public static Machine? Read(SourceText source, DataMap map, FindingList findings)
    {
        var sheet = new Fields(map, Shape, findings);
        if (sheet.Text(Key) is not { } id)
            return null;
        var machine = Measured(new Machine(source, id, map)
        {
            Title = sheet.Text("title"),
            Basis = sheet.Text("basis"),
            Serials = sheet.Text("serials") is { } serials ? SerialsReader.Read(serials, findings) : null,
            Places = PlacesAndStates.ReadPlaces(sheet),
            Zones = PlacesAndStates.ReadZones(sheet),
            States = PlacesAndStates.ReadStates(sheet),
            Conditions = PlacesAndStates.ReadConditions(sheet),
            Interlocks = InterlockReader.Interlocks(sheet),
            Openings = InterlockReader.Openings(sheet),
            Hazards = HazardReader.Hazards(sheet),
            Devices = DeviceReader.Devices(sheet),
            Fasteners = FastenerReader.Fasteners(sheet),
            Parts = PartReader.Parts(sheet),
            Stacks = StackReader.Stacks(sheet),
            Spaces = LoadsAndSpaces.ReadSpaces(sheet),
            Loads = LoadsAndSpaces.ReadLoads(sheet),
            Masses = LoadsAndSpaces.ReadMasses(sheet),
        }, sheet);
        sheet.Done();
        return machine;
    }

    private static Machine Measured(Machine machine, Fields sheet) => machine with
    {
        Shims = ShimReader.Shims(sheet),
        Readings = MeasuringReader.ReadReadings(sheet),
        Values = MeasuringReader.ReadValues(sheet),
        Tests = TestReader.Tests(sheet),
    };
}
