using System.Text.RegularExpressions;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Reading.Data;
using Witnessmark.Reading.Facts;
using Witnessmark.Reading.Faults;
using Witnessmark.Reading.Shapes;

namespace Witnessmark.Reading.Sheets;

/// <summary>Locks, chocks, blanks: what goes in for the work and must come out again.</summary>
internal static partial class DeviceReader
{
    private const string StateFromTo = "^(?<state>" + Spelling.Name + ") +(?<from>" + Spelling.Name + ") +to +(?<to>" + Spelling.Name + ")$";

    private static readonly SpelledForm TurnForm = new("turn", () => StateFromTo);

    private static readonly Shape Shape = new(
        "device",
        "a device",
        Row.List("tags", "[B1, B2]", "the tag on each one; so many tags, so many devices", Row.AName).Must,
        Row.List("blocks", "[engine-start]", "what nobody can do while it is placed", new WordForm(["engine-start", "travel", "closing"])),
        Row.Text("wording", "BLANK, red streamer", "what its tag says"),
        Row.Quantity("rated", "0.35 MPa", "what it holds"),
        Row.Written("turns", TurnForm, "cooling-line open to blanked", "the state that it changes while it is placed"),
        Row.Text("against", "cooling relief 0.35 MPa", "what it must hold against"),
        Row.Text("use", "keeps dust out", "what it is for"),
        Row.Text("material", "steel, yield 235 MPa", "what it is made of"),
        Row.Text("pad", "0.6 m square", "what it stands on"),
        Row.Text("stored-at", "bracket on the rear frame", "where it is kept"),
        Row.Text("substitute-for", "lock-pin puller", "the tool in whose place it is used"),
        Row.Text("thread", "M16x2", "its thread"),
        Row.Quantity("thickness", "2.0 mm", "how thick it is", "length"),
        Row.Quantity("radius", "25 mm", "its radius", "length"),
        Row.Quantity("length", "180 mm", "how long it is", "length"),
        Row.Range("range", "0 to 10 MPa", "what it can be set to"),
        Row.List("holes", "[1, 7]", "the holes that it goes into"),
        Row.Basis);

    public static readonly Row Section = Row.Each("devices", Shape, "{tags: [B1, B2], blocks: [engine-start]}", "locks, chocks, blanks: what goes in for the work and comes out again");

    public static Items<DeviceKind> Devices(Fields sheet) => new(sheet.Each(Section.Key, One));

    private static DeviceKind One(Located<string> id, Fields device) => new(id, device.Map)
    {
        Tags = device.List("tags"),
        Blocks = device.List("blocks"),
        Wording = device.Text("wording"),
        Rated = device.Quantity("rated"),
        Against = device.Text("against"),
        Turns = device.Text("turns") is { } turns ? Turn(turns, device) : null,
        Material = device.Text("material"),
        Thickness = device.Quantity("thickness"),
        Radius = device.Quantity("radius"),
        Pad = device.Text("pad"),
        SubstituteFor = device.Text("substitute-for"),
    };

    private static DeviceTurn? Turn(Located<string> text, Fields device)
    {
        if (Turned.Match(text.Value) is { Success: true } match)
            return new DeviceTurn(text.Piece(match.Groups["state"]), text.Piece(match.Groups["from"]), text.Piece(match.Groups["to"]), text.At);
        device.Findings.Add(
            DataFaults.ValueWrongKind,
            text.At,
            $"`turns` of {device.What} is `{Say.Short(text.Value)}`; a state and its two values belong there.",
            "What a blank does to its line is then written by hand at each step, and one day it is not.",
            "Write it like this: `turns: cooling-line open to blanked`.");
        return null;
    }

    [GeneratedRegex(StateFromTo)]
    private static partial Regex Turned { get; }
}
