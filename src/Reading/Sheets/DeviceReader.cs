using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;

namespace Witnessmark.Reading.Sheets;

/// <summary>Locks, chocks, blanks: what goes in for the work and must come out again.</summary>
internal static class DeviceReader
{
    public static Items<DeviceKind> Devices(Fields sheet) => new(sheet.Each("devices", "{tags: [B1, B2], blocks: [engine-start]}", One));

    private static DeviceKind One(Located<string> id, Fields device)
    {
        var kind = new DeviceKind(id, device.Map)
        {
            Tags = [.. device.List("tags", "[B1, B2]").Where(tag => Names.Usable(tag, device.Findings))],
            Blocks = device.ListOf("blocks", "engine-start", "travel", "closing"),
            Wording = device.Text("wording", "BLANK, red streamer"),
            Rated = device.Quantity("rated", "0.35 MPa"),
            Turns = device.Text("turns", "cooling-line open to blanked"),
        };
        device.Needs("tags");
        WhatItIs(device);
        return kind;
    }

    /// <summary>Read, so that a slip is found; kept in the node until a rule works with it.</summary>
    private static void WhatItIs(Fields device)
    {
        device.Text("against", "cooling relief 0.35 MPa");
        device.Text("use", "keeps dust out");
        device.Text("material", "steel, yield 235 MPa");
        device.Text("pad", "0.6 m square");
        device.Text("stored-at", "bracket on the rear frame");
        device.Text("substitute-for", "lock-pin puller");
        device.Text("thread", "M16x2");
        device.Quantity("thickness", "2.0 mm", "length");
        device.Quantity("radius", "25 mm", "length");
        device.Quantity("length", "180 mm", "length");
        device.Range("range", "0 to 10 MPa");
        device.List("holes", "[1, 7]");
    }
}
