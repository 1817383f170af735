using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Reading.Data;
using Witnessmark.Reading.Shapes;
using Witnessmark.Reading.Sheets;

namespace Witnessmark.Reading.FrontMatter;

/// <summary>Binds the front matter of a procedure or job.</summary>
internal static partial class FrontMatterReader
{
    public const string ProcedureKey = "procedure";
    public const string JobKey = "job";

    private const string VersionPattern = "^[0-9]{1,5}\\.[0-9]{1,5}\\.[0-9]{1,5}$";

    public static readonly SpelledForm VersionForm = new("version", () => VersionPattern);

    private static readonly Shape Applies = new(
        "applies-to",
        "`applies-to`",
        Row.Written("serials", SerialsReader.Form, "from 0200", "serial numbers that it is for"),
        Row.List("positions", "[CL, CR]", "places that it is for"));

    private static readonly Shape CrewShape = new("crew", "`crew`")
    {
        Other = Row.Count("mechanic", "1", "how many of this role", most: 20),
    };

    private static readonly Shape DroppedShape = new(
        "dropped",
        "what was dropped",
        Row.Text("what", "fingers can be crushed", "the guard that is gone").Must,
        Row.Text("reason", "the ring is guided by a tool", "why").Must);

    private static readonly Shape SiteShape = new("site", "`site`")
    {
        Other = Row.Text("ground", "compacted gravel", "what the site is like"),
    };

    private static readonly Shape CountedShape = new("counted", "`counted`")
    {
        Other = Row.Count("rags", "12", "how many go to the machine and come back", least: 0),
    };

    private static readonly ImmutableArray<Row> Common =
    [
        Row.Text("title", "Build the disc stack and close it", "what the job is, in the imperative").Must,
        Row.Written("version", VersionForm, "1.2.0", "three numbers").Must,
        Row.Word("status", ["draft", "in-review", "released", "withdrawn"], "how far it is").Must,
        Row.Word("language", SheetLanguages.All, "language that it is written in"),
        Row.Name("machine", "okr-34", "data sheet of the machine"),
        Row.Below("applies-to", Applies, "{serials: from 0200, positions: [CL, CR]}", "machines and places that it is for"),
        Row.Below("crew", CrewShape, "{mechanic: 1, helper: 1}", "how many of which role"),
        Row.YesNo("common-part", "whether others perform it"),
        Row.Text("basis", "OKR-34 data sheet 7 rev C", "where the numbers come from"),
        Row.List("authors", "[MO]", "initials of who wrote it"),
        Row.List("uses-tools", "[crane-truck]", "the tool lists that it works from"),
        Pins.UsesSection,
        Pins.TakesSection,
        Approvals.Section,
        Row.Members("drops", DroppedShape, "{what: fingers can be crushed, reason: the ring is guided by a tool}", "guards that this version leaves out, and why"),
        MeasuringReader.Readings,
        MeasuringReader.Values,
        TestReader.Section,
        HazardReader.Section,
        DeviceReader.Section,
        WorkshopSheet.Calls,
    ];

    private static readonly Unless NeedsMachine = new("machine", "common-part", "yes");

    private static readonly Shape ProcedureShape = new(
        ProcedureKey, "the front matter", [Row.Id(ProcedureKey, "WB-40", "its id").Must, .. Common])
    {
        Needs = [NeedsMachine],
    };

    private static readonly Shape JobShape = new(
        JobKey,
        "the front matter",
        [
            Row.Id(JobKey, "centre-left-reline", "its name").Must,
            .. Common,
            Row.Quantity("shift", "10 h", "how long people work at a stretch", "time"),
            Row.Below("site", SiteShape, "{slope: along travel, ground: compacted gravel}", "where the machine stands"),
            Row.Below("counted", CountedShape, "{tools: \"23\", rags: \"12\"}", "what is counted before and after"),
        ])
    {
        Needs = [NeedsMachine],
    };

    /// <summary>A job names itself by <c>job</c>; with both names it is read as a procedure.</summary>
    public static readonly Choice Shape = new(ProcedureShape, new Telling(ProcedureShape, [ProcedureKey]), new Telling(JobShape, [JobKey]));

    /// <summary>The procedure without its text, or null when it has no name.</summary>
    public static Procedure? Read(SourceText source, DataMap map, FindingList findings)
    {
        var fields = new Fields(map, Shape.Of(map), findings);
        var isJob = fields.Shape == JobShape;
        if (!isJob && !fields.Has(ProcedureKey))
            findings.Add(Names.Missing(ProcedureKey, fields.What, map));
        if (fields.Text(isJob ? JobKey : ProcedureKey) is not { } id)
            return null;
        var procedure = WithItems(WithHead(new Procedure(source, id, map) { IsJob = isJob }, fields), fields);
        fields.Done();
        return procedure;
    }

    /// <summary>What it is, for which machine, by whom.</summary>
    private static Procedure WithHead(Procedure procedure, Fields fields) => procedure with
    {
        Title = fields.Text("title"),
        Version = Version(fields, "version"),
        Status = Status(fields),
        Language = fields.Text("language"),
        Machine = fields.Text("machine"),
        AppliesTo = Applicability(fields),
        Crew = Crew(fields),
        IsCommonPart = fields.YesNo("common-part")?.Value ?? false,
        Basis = fields.Text("basis"),
        Authors = fields.List("authors"),
        UsesTools = fields.List("uses-tools"),
        Uses = Pins.Uses(fields),
        Takes = Pins.Takes(fields),
        Approvals = Approvals.Read(fields),
        Drops = [.. fields.Members("drops").Select(Dropped).OfType<Dropped>()],
    };

    private static Dropped? Dropped(Fields line) =>
        line.Text("what") is { } what && line.Text("reason") is { } reason ? new Dropped(what, reason) : null;

    /// <summary>What it declares for itself, beside the data sheet.</summary>
    private static Procedure WithItems(Procedure procedure, Fields fields) => procedure with
    {
        Readings = MeasuringReader.ReadReadings(fields),
        Values = MeasuringReader.ReadValues(fields),
        Tests = TestReader.Tests(fields),
        Hazards = HazardReader.Hazards(fields),
        Devices = DeviceReader.Devices(fields),
        Calls = WorkshopSheet.ReadCalls(fields),
    };

    /// <summary><c>1.2.3</c></summary>
    internal static Located<string>? Version(Fields fields, string key)
    {
        if (fields.Text(key) is not { } text)
            return null;
        if (ThreeNumbers.IsMatch(text.Value))
            return text;
        fields.WrongKind(fields.Map.Find(key)!, $"`{Say.Short(text.Value)}`", "a version of three numbers", "1.2.0");
        return null;
    }

    private static Located<ReleaseStatus>? Status(Fields fields) =>
        fields.Text("status") is { } word
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
        if (fields.Below("applies-to") is not { } below)
            return null;
        var serials = below.Text("serials") is { } text ? SerialsReader.Read(text, fields.Findings) : null;
        return new Located<Applicability>(new Applicability(serials, below.List("positions")), below.Map.At);
    }

    private static ImmutableArray<(Located<string> Role, Located<int> Number)> Crew(Fields fields)
    {
        if (fields.Below("crew") is not { } below)
            return [];
        var crew = ImmutableArray.CreateBuilder<(Located<string>, Located<int>)>();
        foreach (var role in below.Map.Entries)
            if (below.Count(role.Key.Value) is { } number)
                crew.Add((role.Key, number));
        return crew.ToImmutable();
    }

    [GeneratedRegex(VersionPattern)]
    internal static partial Regex ThreeNumbers { get; }
}
