using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;
using Witnessmark.Reading.Shapes;

namespace Witnessmark.Reading.Sheets;

/// <summary>The root file of a workshop.</summary>
internal static class WorkshopSheet
{
    public const string Key = "workshop";

    private const string Metric = "metric";
    private const string UsCustomary = "US customary";

    private static readonly Shape UnitsShape = new(
        "units",
        "units",
        Row.Word("native", [Metric, UsCustomary], "the units that stand first"),
        Row.Word("beside", [Metric, UsCustomary, "none"], "the units that stand behind them"));

    private static readonly Shape TighteningShape = new(
        "tightening",
        "tightening",
        PassReader.Passes,
        FastenerReader.Pattern,
        Row.Text("witness-mark", "yellow paint pen, bolt head to joint face", "the mark across a tightened fastener"));

    private static readonly Shape RoleShape = new(
        "role",
        "a role",
        Row.Text("needs", "brake licence", "what one must have for it"),
        Row.Text("not", "author", "who cannot have it"),
        Row.Basis);

    private static readonly Shape PersonShape = new(
        "person",
        "a person",
        Row.Text("role", "mechanic", "what this person is").Must,
        Row.List("also", "[crane-driver]", "other roles"),
        Row.List("in-training", "[WB-40]", "procedures that this person still learns"),
        Row.Text("mark-signs", "K", "first signs of the set marks that this person gives to copies"),
        Row.Basis);

    private static readonly Shape CallShape = new(
        "call",
        "a call",
        Row.Text("call", "\"hands clear?\"", "what one says").Must,
        Row.Text("answer", "\"clear\"", "what the other answers").Must,
        Row.Basis);

    private static readonly Shape DocumentShape = new(
        "maker-document",
        "a document",
        Row.Text("document", "OKR-34 data sheet 7", "as a basis names it").Must,
        Row.Text("revision", "C", "the one that holds").Must,
        Row.List("superseded", "[A, B]", "earlier ones"));

    /// <summary>The <c>calls:</c> of the workshop or of a procedure's front matter.</summary>
    public static readonly Row Calls = Row.Each("calls", CallShape, "{call: \"hands clear?\", answer: \"clear\"}", "what people say to each other, word for word");

    public static readonly Shape Shape = new(
        "workshop",
        "the workshop file",
        Row.Text(Key, "Cressel Ridge field crew", "name of the crew"),
        Row.Word("language", SheetLanguages.All, "language of the sheets"),
        Row.Below("units", UnitsShape, "{native: metric, beside: US customary}", "which units stand first and which behind them"),
        Row.Word("signal-words", ["ANSI Z535", "military"], "which words safety messages begin with"),
        Row.Text("notice", "The machine maker's service data stand above this sheet.", "what stands on every sheet"),
        Row.Text("help", "radio 4", "who can be asked"),
        Row.Word("paper", ["A4", "Letter"], "size of the sheets"),
        LimitsReader.Section,
        Row.Each("roles", RoleShape, "{needs: brake licence}", "what people can be"),
        Row.Each("people", PersonShape, "{role: mechanic}", "people by their initials"),
        Calls,
        Row.List("released-needs", "[independent mechanic]", "who approves what is released"),
        Row.List("hazard-needs", "[mechanic, independent mechanic]", "who approves a change that can hurt"),
        Row.Members("maker-data", DocumentShape, "{document: OKR-34 data sheet 7, revision: C, superseded: [A, B]}", "the maker's documents and which revision holds"),
        Row.Below("tightening", TighteningShape, "{passes: [30 %, 60 %, 100 %]}", "how fasteners are tightened where a group does not say"));

    public static Workshop Read(SourceText source, DataMap map, FindingList findings)
    {
        var sheet = new Fields(map, Shape, findings);
        var workshop = new Workshop(source, map)
        {
            Title = sheet.Text(Key),
            Language = sheet.Text("language"),
            NativeUnits = sheet.Below("units")?.Text("native")?.Value == UsCustomary ? UnitSystem.UsCustomary : UnitSystem.Metric,
            SignalWords = sheet.Text("signal-words"),
            Notice = sheet.Text("notice"),
            Help = sheet.Text("help"),
            Paper = sheet.Text("paper"),
            Limits = LimitsReader.Read(sheet),
            Roles = new(sheet.Each("roles", (id, role) => new Role(id, role.Map, role.Text("needs")?.Value))),
            People = new(sheet.Each("people", Person)),
            Calls = ReadCalls(sheet),
            ReleasedNeeds = sheet.List("released-needs"),
            HazardNeeds = sheet.List("hazard-needs"),
            MakerData = [.. sheet.Members("maker-data").Select(Document).OfType<MakerDocument>()],
        };
        workshop = WithTightening(workshop, sheet);
        sheet.Done();
        return workshop;
    }

    public static Items<CallLine> ReadCalls(Fields fields) => new(fields.Each(Calls.Key, (id, call) =>
        new CallLine(id, call.Map, call.Text("call")?.Value ?? "", call.Text("answer")?.Value ?? "")));

    private static Workshop WithTightening(Workshop workshop, Fields sheet) => sheet.Below("tightening") is { } tightening
        ? workshop with { Passes = PassReader.Read(tightening), WitnessMark = tightening.Text("witness-mark") }
        : workshop;

    private static MakerDocument? Document(Fields line)
    {
        var (document, revision, superseded) = (line.Text("document"), line.Text("revision"), line.List("superseded"));
        return document is { } d && revision is { } r ? new MakerDocument(d, r, superseded) : null;
    }

    private static Person Person(Located<string> initials, Fields person) => new(initials, person.Map)
    {
        Role = person.Text("role"),
        Also = person.List("also"),
        InTraining = person.List("in-training"),
        MarkSigns = person.Text("mark-signs"),
    };
}
