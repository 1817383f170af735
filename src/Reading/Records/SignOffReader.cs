using System.Collections.Immutable;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;

namespace Witnessmark.Reading.Records;

/// <summary>
/// A sign-off as it was typed from the sheet. A key without a value is a box that is still empty, not a slip; whether it may
/// be empty is for those who hold the record against the sheet.
/// </summary>
public static class SignOffReader
{
    public const string Key = "record";

    private static readonly ImmutableArray<string> OnlyHere = [Key, "hash", "copy", "entries"];

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
        var record = new Fields(map, "the sign-off", findings) { BlanksMayStay = true };
        var signOff = new SignOff(source, map)
        {
            Title = record.Text(Key, "2031-06-11 unit 14 CL WB-40"),
            Procedure = record.Text("procedure", "WB-40"),
            Part = record.Text("part", "strip"),
            Version = record.Text("version", "2.1.0"),
            Hash = record.Text("hash", "3f9a c21b 77de"),
            Words = record.Text("words", "es 6A89 FCB9 9BC8"),
            Copy = record.Text("copy", "K7M"),
            Issued = record.Text("issued", "2031-06-11T06:40+02:00"),
            IssuedBy = record.Text("issued-by", "RK"),
            Place = record.Text("place", "CL"),
            Crew = [.. record.Members("crew", "{initials: MO, role: mechanic}").Select(Member).OfType<CrewMember>()],
            TypedBy = record.Text("typed-by", "TV"),
            SheetImage = record.Text("sheet-image", "sha256:3f9a…"),
            Entries = [.. record.Members("entries", "{step: 24/8, by: TV}").Select(Entry).OfType<SignOffEntry>()],
            Stops = Statement(record, "stops"),
            Deviations = Statement(record, "deviations"),
            Owed = Owed(record),
            Release = Release(record),
        };
        signOff = WithMachine(signOff, record);
        record.Needs(Key, "procedure", "entries");
        record.Done();
        return signOff;
    }

    private static SignOff WithMachine(SignOff signOff, Fields record)
    {
        if (record.Below("machine", "the machine", "{unit: 14, serial: 0417, hours: 12405 h}") is not { } machine)
            return signOff;
        signOff = signOff with
        {
            Unit = machine.Text("unit", "14"),
            Serial = machine.Text("serial", "0417"),
            Hours = machine.Quantity("hours", "12405 h", "time"),
        };
        machine.Done();
        return signOff;
    }

    private static CrewMember? Member(Fields member)
    {
        var initials = member.Text("initials", "MO");
        var role = member.Text("role", "mechanic");
        var observedBy = member.Text("observed-by", "MO");
        member.Done();
        return initials is { } who ? new CrewMember(who, role, observedBy) : null;
    }

    /// <summary>Counts, readings and words stand under names of their own; they are kept as they were written.</summary>
    private static SignOffEntry? Entry(Fields entry)
    {
        entry.Needs("step");
        return entry.Text("step", "24/8") is { } step
            ? new SignOffEntry(step, [.. entry.Map.Entries.Where(e => e.Key.Value != "step")], entry.Map.At)
            : null;
    }

    /// <summary>One text, or one a line.</summary>
    private static Located<string>? Statement(Fields record, string key)
    {
        if (record.Node(key) is not DataList list)
            return record.Text(key, "none, MO");
        var lines = record.List(key, "[stopped 14:10 for rain, MO]");
        return lines.IsEmpty ? null : new Located<string>(string.Join("; ", lines.Select(l => l.Value)), list.At);
    }

    private static ImmutableArray<Located<string>> Owed(Fields record)
    {
        var owed = ImmutableArray.CreateBuilder<Located<string>>();
        foreach (var debt in record.Members("owed", "{what: wheel nut re-torque, due: 12407 h}"))
        {
            if (debt.Text("what", "wheel nut re-torque") is { } what)
                owed.Add(what);
            debt.Text("due", "12407 h");
            debt.Needs("what");
            debt.Done();
        }
        return owed.ToImmutable();
    }

    private static ReleaseLine? Release(Fields record)
    {
        if (record.Below("release", "release", "{by: RK, at: 2031-06-11T18:20+02:00}") is not { } release)
            return null;
        var line = new ReleaseLine(release.Text("by", "RK"), release.Text("at", "2031-06-11T18:20+02:00"), release.Map.At);
        release.Done();
        return line;
    }
}
