using System.Collections.Immutable;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;
using Witnessmark.Reading.Shapes;

namespace Witnessmark.Reading.Sheets;

/// <summary>The register of released versions and issued copies. A workshop can have several, one a year; they are read as one.</summary>
internal static class RegisterSheet
{
    public const string Key = "register";

    private static readonly Row Procedure = Row.Text("procedure", "WB-40", "its id").Must;
    private static readonly Row Version = Row.Text("version", "2.1.0", "its version").Must;
    private static readonly Row Hash = Row.Text("hash", "3F9AC21B77DE", "of what was released").Must;
    private static readonly Row Date = Row.Text("date", "2031-05-03", "the day").Must;
    private static readonly Row By = Row.Text("by", "RK", "initials of who put it on record").Must;
    private static readonly Row Mark = Row.Text("copy", "K7M", "set mark of the copy").Must;
    private static readonly Row Why = Row.Text("why", "oil on it", "the reason");

    private static readonly Shape ReleasedShape = new(
        "released-version",
        "a released version",
        Procedure,
        Version,
        Hash,
        Date,
        By,
        Row.List("approvals", "[RK]", "initials of who approved it"));

    private static readonly Shape WithdrawnShape = new("withdrawn-version", "a withdrawn version", Procedure, Version, Date, By, Why);

    private static readonly Shape CopyShape = new(
        "issued-copy",
        "an issued copy",
        Mark,
        Procedure,
        Version,
        Hash,
        Row.Text("unit", "14", "the machine's number on site").Must,
        Row.Text("serial", "0417", "its serial number").Must,
        Row.Text("place", "CL", "where on the machine").Must,
        Row.Text("issued", "2031-06-11T06:40:00+02:00", "when").Must,
        By,
        Row.Text("to", "MO", "who took it"),
        Row.Text("part", "strip", "the part of the procedure"),
        Row.Text("words", "es 6A89 FCB9 9BC8", "language and hash of the words of a translated copy"));

    private static readonly Shape EndedShape = new(
        "ended-copy",
        "a copy that has ended",
        Mark,
        Row.Text("returned", "2031-06-12", "the day on which it came back"),
        Row.Text("spoiled", "2031-06-11", "the day from which nobody may work from it"),
        By,
        Why)
    {
        Needs = [new FirstBegun(["spoiled"], ["returned"])],
    };

    private static readonly Shape CalibratedShape = new(
        "calibrated-tool",
        "a calibrated tool",
        Row.Text("tool", "TW-340", "its name on the tool list").Must,
        Row.Text("number", "W-0312", "the number on the tool itself").Must,
        Row.Text("due", "2032-03-14", "the day from which it may not be used").Must,
        By);

    /// <summary>Where git has merged two registers, a line can stand in the list beside its own: what it says tells what it is.</summary>
    private static readonly ImmutableArray<Telling> Lines =
        [new(EndedShape, ["returned"], ["spoiled"]), new(CopyShape, ["copy", "issued"]), new(ReleasedShape, ["approvals"]), new(CalibratedShape, ["tool"])];

    /// <summary>A list that nothing stands in yet has its head already.</summary>
    public static readonly Shape Shape = new(
        Key,
        "the register",
        Row.Text(Key, "Cressel Ridge field crew", "whose it is"),
        Row.Members("released", new Choice(ReleasedShape, Lines), "{procedure: WB-40, version: 2.1.0, hash: 3F9AC21B77DE, date: \"2031-05-03\", by: RK, approvals: [RK]}", "versions that were released"),
        Row.Members("withdrawn", new Choice(WithdrawnShape, Lines), "{procedure: WB-40, version: 2.0.0, date: \"2031-05-03\", by: RK}", "versions that no longer hold"),
        Row.Members("copies", new Choice(CopyShape, Lines), "{copy: K7M, procedure: WB-40, version: 2.1.0, hash: 3F9AC21B77DE, unit: \"14\", serial: \"0417\", place: CL, issued: \"2031-06-11T06:40:00+02:00\", by: RK}", "copies that were issued"),
        Row.Members("ended", new Choice(EndedShape, Lines), "{copy: K7M, spoiled: \"2031-06-11\", by: RK, why: oil on it}", "copies that nobody works from any more"),
        Row.Members("calibrated", new Choice(CalibratedShape, Lines), "{tool: TW-340, number: W-0312, due: \"2032-03-14\", by: RK}", "wrenches and gauges, and until when each may be used"))
    {
        BlanksMayStay = true,
    };

    public static Register Read(DataMap map, FindingList findings)
    {
        var sheet = new Fields(map, Shape, findings);
        var lines = Shape.Rows.Where(row => row.Holds is Members).SelectMany(list => sheet.Members(list.Key)).ToLookup(line => line.Shape);
        var register = new Register
        {
            Released = [.. lines[ReleasedShape].Select(Released).OfType<ReleasedVersion>()],
            Withdrawn = [.. lines[WithdrawnShape].Select(Withdrawn).OfType<WithdrawnVersion>()],
            Copies = [.. lines[CopyShape].Select(Copy).OfType<IssuedCopy>()],
            Ended = [.. lines[EndedShape].Select(Ended).OfType<EndedCopy>()],
            Calibrated = [.. lines[CalibratedShape].Select(Calibrated).OfType<CalibratedTool>()],
        };
        sheet.Done();
        return register;
    }

    public static Register Join(IReadOnlyCollection<Register> all) => all.Count == 1 ? all.Single() : new Register
    {
        Released = [.. all.SelectMany(r => r.Released)],
        Withdrawn = [.. all.SelectMany(r => r.Withdrawn)],
        Copies = [.. all.SelectMany(r => r.Copies)],
        Ended = [.. all.SelectMany(r => r.Ended)],
        Calibrated = [.. all.SelectMany(r => r.Calibrated)],
    };

    private static ReleasedVersion? Released(Fields line)
    {
        var (procedure, version, hash, date, by) = (line.Text("procedure"), line.Text("version"), line.Text("hash"), line.Text("date"), line.Text("by"));
        var approvals = line.List("approvals");
        return procedure is { } p && version is { } v && hash is { } h && date is { } d && by is { } b
            ? new ReleasedVersion(p, v, h, d, b, approvals, line.Map.At)
            : null;
    }

    private static WithdrawnVersion? Withdrawn(Fields line)
    {
        var (procedure, version, date, by, why) = (line.Text("procedure"), line.Text("version"), line.Text("date"), line.Text("by"), line.Text("why"));
        return procedure is { } p && version is { } v && date is { } d && by is { } b ? new WithdrawnVersion(p, v, d, b, why, line.Map.At) : null;
    }

    private static IssuedCopy? Copy(Fields line)
    {
        var (mark, procedure, version, hash) = (line.Text("copy"), line.Text("procedure"), line.Text("version"), line.Text("hash"));
        var (unit, serial, place) = (line.Text("unit"), line.Text("serial"), line.Text("place"));
        var (issued, by, to, part, words) = (line.Text("issued"), line.Text("by"), line.Text("to"), line.Text("part"), line.Text("words"));
        return mark is { } m && procedure is { } p && version is { } v && hash is { } h && unit is { } u && serial is { } s && place is { } l && issued is { } i && by is { } b
            ? new IssuedCopy(m, p, v, h, u, s, l, i, b, to, part, words, line.Map.At)
            : null;
    }

    private static EndedCopy? Ended(Fields line)
    {
        var (mark, returned, spoiled, by, why) = (line.Text("copy"), line.Text("returned"), line.Text("spoiled"), line.Text("by"), line.Text("why"));
        return mark is { } m && (returned ?? spoiled) is { } date && by is { } b ? new EndedCopy(m, spoiled is null ? CopyEnd.Returned : CopyEnd.Spoiled, date, b, why, line.Map.At) : null;
    }

    private static CalibratedTool? Calibrated(Fields line) =>
        (line.Text("tool"), line.Text("number"), line.Text("due"), line.Text("by")) is ({ } tool, { } number, { } due, { } by) ? new CalibratedTool(tool, number, due, by, line.Map.At) : null;
}
