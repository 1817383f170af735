using System.Collections.Immutable;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;
using Witnessmark.Reading.Shapes;

namespace Witnessmark.Reading.Records;

/// <summary>
/// A sign-off as it was typed from the sheet. A key without a value is a box that is still empty, not a slip; whether it may
/// be empty is for those who hold the record against the sheet.
/// </summary>
public static class SignOffReader
{
    public const string Key = "record";

    private static readonly ImmutableArray<string> OnlyHere = [Key, "hash", "copy", "entries"];

    private static readonly Shape MachineShape = new(
        "machine-of-record",
        "the machine",
        Row.Text("unit", "14", "its number on site"),
        Row.Text("serial", "0417", "its serial number"),
        Row.Quantity("hours", "12405 h", "what its hour meter shows", "time").OrZero);

    private static readonly Shape MemberShape = new(
        "crew-member",
        "one of the crew",
        Row.Text("initials", "MO", "who"),
        Row.Text("role", "mechanic", "in which role"),
        Row.Text("observed-by", "MO", "who watched, where the person still learns"));

    private static readonly Shape EntryShape = new(
        "entry",
        "an entry",
        Row.Text("step", "24/8", "the code that is printed at the step").Must)
    {
        Other = new Row("pins", new Anything(), "\"6\"", "a count, a reading or a word, under the name that is printed beside the box"),
    };

    private static readonly Shape DebtShape = new(
        "debt",
        "what is owed",
        Row.Text("what", "wheel nut re-torque", "the work").Must,
        Row.Text("due", "12407 h", "when"));

    private static readonly Shape ReleaseShape = new(
        "release",
        "release",
        Row.Text("by", "RK", "who gave the machine back"),
        Row.Text("at", "2031-06-11T18:20+02:00", "when"));

    internal static readonly Shape Shape = new(
        "sign-off",
        "the sign-off",
        Row.Text(Key, "2031-06-11 unit 14 CL WB-40", "what the record is called").Must,
        Row.Text("procedure", "WB-40", "what was worked").Must,
        Row.Text("part", "strip", "the part of it"),
        Row.Text("version", "2.1.0", "as printed"),
        Row.Text("hash", "3f9a c21b 77de", "as printed"),
        Row.Text("words", "es 6A89 FCB9 9BC8", "language and hash of the words of a translated copy"),
        Row.Text("copy", "K7M", "set mark of the copy"),
        Row.Text("issued", "2031-06-11T06:40+02:00", "when the copy was issued"),
        Row.Text("issued-by", "RK", "who issued it"),
        Row.Text("place", "CL", "where on the machine"),
        Row.Members("crew", MemberShape, "{initials: MO, role: mechanic}", "who worked"),
        Row.Text("typed-by", "TV", "who typed it from the sheet"),
        Row.Text("sheet-image", "sha256:3f9a…", "hash of the picture of the sheet"),
        Row.Members("entries", EntryShape, "{step: 24/8, by: TV}", "what was written at each step").Must,
        Row.Lines("stops", "none, MO", "where work stopped; none is a signed statement"),
        Row.Lines("deviations", "none, MO", "what was done otherwise; none is a signed statement"),
        Row.Members("owed", DebtShape, "{what: wheel nut re-torque, due: 12407 h}", "work that must follow"),
        Row.Below("release", ReleaseShape, "{by: RK, at: \"2031-06-11T18:20+02:00\"}", "who gave the machine back, and when"),
        Row.Below("machine", MachineShape, "{unit: \"14\", serial: \"0417\", hours: 12405 h}", "which machine"))
    {
        BlanksMayStay = true,
    };

    /// <summary>The record, or null when the file cannot be read; then there is a finding that says why.</summary>
    public static SignOff? Read(RawFile file, FindingList findings)
    {
        if (Decode.Text(file, findings) is not { } source || YamlTree.Read(source, new TextSpan(0, source.Content.Length), findings) is not { } map)
            return null;
        // a data sheet or a procedure in the wrong place would only be told what it lacks
        if (map.Entries is not [var first, ..] || OnlyHere.Any(key => map.Find(key) is not null))
            return Bind(source, map, findings);
        findings.Add(FileFindings.NoSignOff(first.Key));
        return null;
    }

    private static SignOff Bind(SourceText source, DataMap map, FindingList findings)
    {
        var record = new Fields(map, Shape, findings);
        var signOff = new SignOff(source, map)
        {
            Title = record.Text(Key),
            Procedure = record.Text("procedure"),
            Part = record.Text("part"),
            Version = record.Text("version"),
            Hash = record.Text("hash"),
            Words = record.Text("words"),
            Copy = record.Text("copy"),
            Issued = record.Text("issued"),
            IssuedBy = record.Text("issued-by"),
            Place = record.Text("place"),
            Crew = [.. record.Members("crew").Select(Member).OfType<CrewMember>()],
            TypedBy = record.Text("typed-by"),
            SheetImage = record.Text("sheet-image"),
            Entries = [.. record.Members("entries").Select(Entry).OfType<SignOffEntry>()],
            Stops = Statement(record, "stops"),
            Deviations = Statement(record, "deviations"),
            Owed = [.. record.Members("owed").Select(debt => debt.Text("what")).OfType<Located<string>>()],
            Release = Release(record),
        };
        signOff = WithMachine(signOff, record);
        record.Done();
        return signOff;
    }

    private static SignOff WithMachine(SignOff signOff, Fields record) => record.Below("machine") is { } machine
        ? signOff with { Unit = machine.Text("unit"), Serial = machine.Text("serial"), Hours = machine.Quantity("hours") }
        : signOff;

    private static CrewMember? Member(Fields member) =>
        member.Text("initials") is { } who ? new CrewMember(who, member.Text("role"), member.Text("observed-by")) : null;

    /// <summary>Counts, readings and words stand under names of their own; they are kept as they were written.</summary>
    private static SignOffEntry? Entry(Fields entry) => entry.Text("step") is { } step
        ? new SignOffEntry(step, [.. entry.Map.Entries.Where(e => e.Key.Value != "step")], entry.Map.At)
        : null;

    /// <summary>One text, or one a line.</summary>
    private static Located<string>? Statement(Fields record, string key) => (record.List(key), record.Node(key)) switch
    {
        ([], _) or (_, null) => null,
        ([var one], DataText) => one,
        (var lines, { } node) => new Located<string>(string.Join("; ", lines.Select(l => l.Value)), node.At),
    };

    private static ReleaseLine? Release(Fields record) =>
        record.Below("release") is { } release ? new ReleaseLine(release.Text("by"), release.Text("at"), release.Map.At) : null;
}
