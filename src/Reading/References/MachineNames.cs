using Witnessmark.Language.Model;

namespace Witnessmark.Reading.References;

/// <summary>
/// The names of a data sheet. Every part, group, device, space, stack, reading, value and test is a state by being declared:
/// here is what each can be.
/// </summary>
internal static class MachineNames
{
    public static IEnumerable<Declared> Of(Machine machine) =>
    [
        .. machine.States.Select(s => Declared.Of(NameKind.State, s.Id, [.. s.Values.Select(v => v.Value)])),
        .. machine.Parts.Select(p => Declared.Of(NameKind.Part, p.Id, "fitted", "removed")),
        .. machine.Fasteners.Select(Group),
        .. machine.Stacks.Select(s => Declared.Of(NameKind.Stack, s.Id, "as-found", "out", "complete", "verified")),
        .. machine.Shims.Select(s => Declared.Of(NameKind.Shims, s.Id, "fitted", "removed")),
        .. machine.Devices.SelectMany(Device),
        .. machine.Spaces.Select(s => Declared.Of(NameKind.Space, s.Id, "full", "drained")),
        .. machine.Readings.Select(Reading),
        .. machine.Values.Select(Worked),
        .. machine.Tests.Select(Test),
        .. machine.Loads.Select(l => Declared.Of(NameKind.Load, l.Id)),
        new Declared(NameKind.State, "load-on-hook", null, ["none", .. machine.Loads.Names]),
        .. machine.Openings.Select(o => Declared.Of(NameKind.Opening, o.Id, "open", "closed")),
        .. machine.Conditions.Select(c => Declared.Of(NameKind.Bundle, c.Id)),
        .. machine.Zones.Select(z => Declared.Of(NameKind.Zone, z.Id)),
        .. machine.Hazards.Select(h => Declared.Of(NameKind.Hazard, h.Id)),
        .. machine.Places.Select(p => Declared.Of(NameKind.PlaceKind, p.Name)),
        .. machine.Places.SelectMany(p => p.Names).Select(n => Declared.Of(NameKind.Place, n)),
    ];

    public static Declared Reading(ReadingItem reading) => Declared.Of(NameKind.Reading, reading.Id, ["not-taken", "taken", .. reading.Results]);

    public static Declared Worked(WorkedValue value) => Declared.Of(NameKind.Value, value.Id, "inside", "outside", "worked-out", "not-worked-out");

    public static Declared Test(TestItem test) => Declared.Of(NameKind.Test, test.Id, "not-done", "passed", "failed");

    public static IEnumerable<Declared> Device(DeviceKind device) =>
        device.Tags.Prepend(device.Id).Select(name => Declared.Of(NameKind.Device, name, "stored", "placed"));

    private static Declared Group(FastenerGroup group) => Declared.Of(NameKind.Fasteners, group.Id, "torqued", "snug", "loose", "removed", "fitted");
}
