using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;

namespace Witnessmark.Reading.Sheets;

/// <summary>A machine's data sheet: what its procedures share.</summary>
internal static class MachineSheet
{
    public const string Key = "machine";

    /// <summary>The sheet, or null when it has no name.</summary>
    public static Machine? Read(SourceText source, DataMap map, FindingList findings)
    {
        var sheet = new Fields(map, "the data sheet", findings);
        if (sheet.Id(Key, "okr-34") is not { } id)
            return null;
        var machine = Measured(new Machine(source, id, map)
        {
            Title = sheet.Text("title", "OKR-34 articulated hauler"),
            Basis = sheet.Text("basis", "OKR-34 data sheet 7 rev C"),
            Serials = sheet.Text("serials", "from 0200") is { } serials ? SerialsReader.Read(serials, findings) : null,
            Places = PlacesAndStates.Places(sheet),
            Zones = PlacesAndStates.Zones(sheet),
            States = PlacesAndStates.States(sheet),
            Conditions = PlacesAndStates.Conditions(sheet),
            Interlocks = InterlockReader.Interlocks(sheet),
            Openings = InterlockReader.Openings(sheet),
            Hazards = HazardReader.Hazards(sheet),
            Devices = DeviceReader.Devices(sheet),
            Fasteners = FastenerReader.Fasteners(sheet),
            Parts = PartReader.Parts(sheet),
            Stacks = StackReader.Stacks(sheet),
            Spaces = LoadsAndSpaces.Spaces(sheet),
            Loads = LoadsAndSpaces.Loads(sheet),
        }, sheet);
        sheet.Done();
        return machine;
    }

    private static Machine Measured(Machine machine, Fields sheet) => machine with
    {
        Shims = ShimReader.Shims(sheet),
        Readings = MeasuringReader.Readings(sheet),
        Values = MeasuringReader.Values(sheet),
        Tests = TestReader.Tests(sheet),
    };
}
