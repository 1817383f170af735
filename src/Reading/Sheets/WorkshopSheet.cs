using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;

namespace Witnessmark.Reading.Sheets;

/// <summary>The root file of a workshop.</summary>
internal static class WorkshopSheet
{
    public const string Key = "workshop";

    public static Workshop Read(SourceText source, DataMap map, FindingList findings)
    {
        var sheet = new Fields(map, "the workshop file", findings);
        var workshop = new Workshop(source, map)
        {
            Title = sheet.Text(Key, "Cressel Ridge field crew"),
            Language = sheet.OneOf("language", "en", "es"),
            NativeUnits = NativeUnits(sheet),
            SignalWords = sheet.OneOf("signal-words", "ANSI Z535", "military"),
            Notice = sheet.Text("notice", "The machine maker's service data stand above this sheet."),
            Help = sheet.Text("help", "radio 4"),
            Paper = sheet.OneOf("paper", "A4", "Letter"),
            Limits = LimitsReader.Read(sheet),
            Roles = new(sheet.Each("roles", "{needs: brake licence}", Role)),
            People = new(sheet.Each("people", "{role: mechanic}", Person)),
            Calls = Calls(sheet),
            ReleasedNeeds = sheet.List("released-needs", "[independent mechanic]"),
            HazardNeeds = sheet.List("hazard-needs", "[mechanic, independent mechanic]"),
            MakerData = [.. sheet.Members("maker-data", "document: OKR-34 data sheet 7, revision: C, superseded: [A, B]").Select(MakerDocument).OfType<MakerDocument>()],
        };
        workshop = WithTightening(workshop, sheet);
        sheet.Done();
        return workshop;
    }

    /// <summary>The <c>calls:</c> of the workshop or of a procedure's front matter.</summary>
    public static Items<CallLine> Calls(Fields fields) => new(fields.Each("calls", "{call: \"hands clear?\", answer: \"clear\"}", Call));

    private static UnitSystem NativeUnits(Fields sheet)
    {
        if (sheet.Below("units", "units", "{native: metric, beside: US customary}") is not { } units)
            return UnitSystem.Metric;
        var native = units.OneOf("native", "metric", "US customary");
        units.OneOf("beside", "metric", "US customary", "none");
        units.Done();
        return native?.Value == "US customary" ? UnitSystem.UsCustomary : UnitSystem.Metric;
    }

    private static Workshop WithTightening(Workshop workshop, Fields sheet)
    {
        if (sheet.Below("tightening", "tightening", "{passes: [30 %, 60 %, 100 %]}") is not { } tightening)
            return workshop;
        workshop = workshop with
        {
            Passes = PassReader.Passes(tightening),
            WitnessMark = tightening.Text("witness-mark", "yellow paint pen, bolt head to joint face"),
        };
        tightening.OneOf("pattern", "star", "circular");
        tightening.Done();
        return workshop;
    }

    private static MakerDocument? MakerDocument(Fields line)
    {
        var (document, revision, superseded) = (line.Text("document", "OKR-34 data sheet 7"), line.Text("revision", "C"), line.List("superseded", "[A, B]"));
        line.Done("document", "revision");
        return document is { } d && revision is { } r ? new MakerDocument(d, r, superseded) : null;
    }

    private static Role Role(Located<string> id, Fields role)
    {
        var item = new Role(id, role.Map, role.Text("needs", "brake licence")?.Value);
        role.Text("not", "author");
        return item;
    }

    private static Person Person(Located<string> initials, Fields person)
    {
        var item = new Person(initials, person.Map)
        {
            Role = person.Text("role", "mechanic"),
            Also = person.List("also", "[crane-driver]"),
            InTraining = person.List("in-training", "[WB-40]"),
            MarkSigns = person.Text("mark-signs", "K"),
        };
        person.Needs("role");
        return item;
    }

    private static CallLine Call(Located<string> id, Fields call)
    {
        var item = new CallLine(id, call.Map, call.Text("call", "\"hands clear?\"")?.Value ?? "", call.Text("answer", "\"clear\"")?.Value ?? "");
        call.Needs("call", "answer");
        return item;
    }
}
