using System.Collections.Immutable;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;

namespace Witnessmark.Reading.Sheets;

/// <summary>The register of released versions and issued copies. A workshop can have several, one a year; they are read as one.</summary>
internal static class RegisterSheet
{
    public const string Key = "register";

    private static readonly ImmutableArray<(string Key, string Example)> Lists =
    [
        ("released", "procedure: WB-40, version: 2.1.0, hash: 3f9ac2…, date: 2031-05-03, by: RK, approvals: [RK]"),
        ("withdrawn", "procedure: WB-40, version: 2.0.0, date: 2031-05-03, by: RK"),
        ("copies", "copy: K7M, procedure: WB-40, version: 2.1.0, hash: 3F9AC21B77DE, unit: 14, serial: 0417, place: CL, issued: 2031-06-11T06:40:00+02:00, by: RK"),
        ("ended", "copy: K7M, spoiled: 2031-06-11, by: RK, why: oil on it"),
    ];

    public static Register Read(DataMap map, FindingList findings)
    {
        // a list that nothing stands in yet has its head already
        var sheet = new Fields(map, "the register", findings) { BlanksMayStay = true };
        sheet.Text(Key, "Cressel Ridge field crew");
        var lines = Lists.SelectMany(list => sheet.Members(list.Key, list.Example).Select(line => (List: ListOf(line, list.Key), Line: line))).ToLookup(l => l.List, l => l.Line);
        var register = new Register
        {
            Released = [.. lines["released"].Select(Released).OfType<ReleasedVersion>()],
            Withdrawn = [.. lines["withdrawn"].Select(Withdrawn).OfType<WithdrawnVersion>()],
            Copies = [.. lines["copies"].Select(Copy).OfType<IssuedCopy>()],
            Ended = [.. lines["ended"].Select(Ended).OfType<EndedCopy>()],
        };
        sheet.Done();
        return register;
    }

    /// <summary>Where git has merged two registers, a line can stand in the list beside its own: what it says tells what it is.</summary>
    private static string ListOf(Fields line, string written) =>
        line.Has("returned") || line.Has("spoiled") ? "ended"
        : line.Has("copy") && line.Has("issued") ? "copies"
        : line.Has("approvals") ? "released"
        : written;

    public static Register Join(IReadOnlyCollection<Register> all) => all.Count == 1 ? all.Single() : new Register
    {
        Released = [.. all.SelectMany(r => r.Released)],
        Withdrawn = [.. all.SelectMany(r => r.Withdrawn)],
        Copies = [.. all.SelectMany(r => r.Copies)],
        Ended = [.. all.SelectMany(r => r.Ended)],
    };

    private static ReleasedVersion? Released(Fields line)
    {
        var (procedure, version, hash, date, by) = (line.Text("procedure"), line.Text("version"), line.Text("hash"), line.Text("date"), line.Text("by"));
        var approvals = line.List("approvals", "[RK]");
        line.Done("procedure", "version", "hash", "date", "by");
        return procedure is { } p && version is { } v && hash is { } h && date is { } d && by is { } b
            ? new ReleasedVersion(p, v, h, d, b, approvals, line.Map.At)
            : null;
    }

    private static WithdrawnVersion? Withdrawn(Fields line)
    {
        var (procedure, version, date, by, why) = (line.Text("procedure"), line.Text("version"), line.Text("date"), line.Text("by"), line.Text("why"));
        line.Done("procedure", "version", "date", "by");
        return procedure is { } p && version is { } v && date is { } d && by is { } b ? new WithdrawnVersion(p, v, d, b, why, line.Map.At) : null;
    }

    private static IssuedCopy? Copy(Fields line)
    {
        var (mark, procedure, version, hash) = (line.Text("copy"), line.Text("procedure"), line.Text("version"), line.Text("hash"));
        var (unit, serial, place) = (line.Text("unit"), line.Text("serial"), line.Text("place"));
        var (issued, by, to, part, words) = (line.Text("issued"), line.Text("by"), line.Text("to"), line.Text("part"), line.Text("words"));
        line.Done("copy", "procedure", "version", "hash", "unit", "serial", "place", "issued", "by");
        return mark is { } m && procedure is { } p && version is { } v && hash is { } h && unit is { } u && serial is { } s && place is { } l && issued is { } i && by is { } b
            ? new IssuedCopy(m, p, v, h, u, s, l, i, b, to, part, words, line.Map.At)
            : null;
    }

    private static EndedCopy? Ended(Fields line)
    {
        var (mark, returned, spoiled, by, why) = (line.Text("copy"), line.Text("returned"), line.Text("spoiled"), line.Text("by"), line.Text("why"));
        line.Done("copy", "by");
        if (returned is null && spoiled is null)
            line.Needs("returned");
        return mark is { } m && (returned ?? spoiled) is { } date && by is { } b ? new EndedCopy(m, spoiled is null ? CopyEnd.Returned : CopyEnd.Spoiled, date, b, why, line.Map.At) : null;
    }
}
