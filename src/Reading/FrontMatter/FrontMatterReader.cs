using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Reading.Data;
using Witnessmark.Reading.Sheets;

namespace Witnessmark.Reading.FrontMatter;

/// <summary>Binds the front matter of a procedure or job.</summary>
internal static partial class FrontMatterReader
{
    public const string ProcedureKey = "procedure";
    public const string JobKey = "job";

    private const int LargestCrew = 20;

    /// <summary>The procedure without its text, or null when it has no name.</summary>
    public static Procedure? Read(SourceText source, DataMap map, FindingList findings)
    {
        var fields = new Fields(map, "the front matter", findings);
        var isJob = fields.Has(JobKey) && !fields.Has(ProcedureKey);
        if (Id(fields, isJob) is not { } id)
            return null;
        var procedure = WithItems(WithHead(new Procedure(source, id, map) { IsJob = isJob }, fields), fields);
        if (isJob)
            JobKeys(fields);
        fields.Done(procedure.IsCommonPart ? ["title", "version", "status"] : ["title", "version", "status", "machine"]);
        return procedure;
    }

    private static Located<string>? Id(Fields fields, bool isJob)
    {
        var key = isJob ? JobKey : ProcedureKey;
        if (!fields.Has(key))
            fields.Findings.Add(Names.Missing(ProcedureKey, fields.What, fields.Map));
        return fields.Id(key, isJob ? "centre-left-reline" : "WB-40");
    }

    /// <summary>What it is, for which machine, by whom.</summary>
    private static Procedure WithHead(Procedure procedure, Fields fields) => procedure with
    {
        Title = fields.Text("title", "Build the disc stack and close it"),
        Version = Version(fields, "version"),
        Status = Status(fields),
        Language = fields.OneOf("language", "en", "es"),
        Machine = fields.Name("machine", "okr-34"),
        AppliesTo = Applicability(fields),
        Crew = Crew(fields),
        IsCommonPart = fields.YesNo("common-part")?.Value ?? false,
        Basis = fields.Text("basis", "OKR-34 data sheet 7 rev C"),
        Authors = fields.List("authors", "[MO]"),
        UsesTools = fields.List("uses-tools", "crane-truck"),
        Uses = Pins.Uses(fields),
        Takes = Pins.Takes(fields),
        Approvals = Approvals.Read(fields),
        Drops = [.. fields.Members("drops", "what: fingers can be crushed, reason: the ring is guided by a tool").Select(Dropped).OfType<Dropped>()],
    };

    private static Dropped? Dropped(Fields line)
    {
        var (what, reason) = (line.Text("what", "fingers can be crushed"), line.Text("reason", "the ring is guided by a tool"));
        line.Done("what", "reason");
        return what is { } w && reason is { } r ? new Dropped(w, r) : null;
    }

    /// <summary>What it declares for itself, beside the data sheet.</summary>
    private static Procedure WithItems(Procedure procedure, Fields fields) => procedure with
    {
        Readings = MeasuringReader.Readings(fields),
        Values = MeasuringReader.Values(fields),
        Tests = TestReader.Tests(fields),
        Hazards = HazardReader.Hazards(fields),
        Devices = DeviceReader.Devices(fields),
        Calls = WorkshopSheet.Calls(fields),
    };

    /// <summary><c>1.2.3</c></summary>
    internal static Located<string>? Version(Fields fields, string key)
    {
        if (fields.Text(key, "1.2.0") is not { } text)
            return null;
        if (ThreeNumbers.IsMatch(text.Value))
            return text;
        fields.WrongKind(fields.Map.Find(key)!, $"`{Say.Short(text.Value)}`", "a version of three numbers", "1.2.0");
        return null;
    }

    private static Located<ReleaseStatus>? Status(Fields fields) =>
        fields.OneOf("status", "draft", "in-review", "released", "withdrawn") is { } word
            ? word.As(word.Value switch
            {
                "draft" => ReleaseStatus.Draft,
                "in-review" => ReleaseStatus.InReview,
                "released" => ReleaseStatus.Released,
                _ => ReleaseStatus.Withdrawn,
            })
            : null;

    private static Located<Applicability>? Applicability(Fields fields)
    {
        if (fields.Below("applies-to", "`applies-to`", "{serials: from 0200, positions: [CL, CR]}") is not { } below)
            return null;
        var serials = below.Text("serials", "from 0200") is { } text ? SerialsReader.Read(text, fields.Findings) : null;
        var applies = new Applicability(serials, below.List("positions", "[CL, CR]"));
        below.Done();
        return new Located<Applicability>(applies, below.Map.At);
    }

    private static ImmutableArray<(Located<string> Role, Located<int> Number)> Crew(Fields fields)
    {
        if (fields.Below("crew", "`crew`", "{mechanic: 1, helper: 1}") is not { } below)
            return [];
        var crew = ImmutableArray.CreateBuilder<(Located<string>, Located<int>)>();
        foreach (var role in below.Map.Entries)
            if (below.Count(role.Key.Value, "1", most: LargestCrew) is { } number)
                crew.Add((role.Key, number));
        return crew.ToImmutable();
    }

    /// <summary>Read, so that a slip is found; they stay in the node.</summary>
    private static void JobKeys(Fields fields)
    {
        fields.Quantity("shift", "10 h", "time");
        if (fields.Below("site", "`site`", "{slope: along travel, ground: compacted gravel}") is { } site)
            foreach (var fact in site.Map.Entries)
                site.Text(fact.Key.Value);
        if (fields.Below("counted", "`counted`", "{tools: 23, rags: 12}") is { } counted)
            foreach (var thing in counted.Map.Entries)
                counted.Count(thing.Key.Value, "23", least: 0);
    }

    [GeneratedRegex("^[0-9]{1,5}\\.[0-9]{1,5}\\.[0-9]{1,5}$")]
    internal static partial Regex ThreeNumbers { get; }
}
