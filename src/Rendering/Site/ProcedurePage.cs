using Scriban.Runtime;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Site;

/// <summary>A procedure to read at the desk or on a phone: everything that is written, with what the data sheet adds.</summary>
internal static class ProcedurePage
{
    public static OutputFile Render(Procedure procedure, SiteData data, PageFrame frame)
    {
        var scope = data.Library.ScopeOf(procedure);
        var rows = new FactRows(scope, data.Library);
        var standing = Standing.Of(procedure, data.Library.Register, data.Hashes.GetValueOrDefault(procedure.Id.Value, ""));
        var content = new ScriptObject
        {
            ["standing"] = new ScriptObject { ["says"] = standing.Says, ["holds"] = standing.Holds, ["word"] = standing.Word },
            ["copies"] = VersionPages.Out(procedure.Id.Value, data.Library.Register),
            ["versions"] = VersionPages.PathOf(procedure.Id.Value, data) ?? "",
            ["id"] = procedure.Id.Value,
            ["title"] = procedure.Title?.Value ?? procedure.Id.Value,
            ["released"] = procedure.Status?.Value == ReleaseStatus.Released,
            ["card"] = Card(procedure, data, scope),
            ["sheets"] = new ScriptArray(data.Sheets.GetValueOrDefault(procedure.Id.Value, []).Select(s => new ScriptObject { ["says"] = s.Says, ["path"] = s.Path })),
            ["introduction"] = ProseHtml.Blocks(procedure.Introduction),
            ["parts"] = new ScriptArray(procedure.Parts.Select((p, i) => Part(p, procedure, rows, StepFigures.Of(p, i, scope)))),
        };
        return frame.Page(SitePages.PathOf(procedure), $"{procedure.Id.Value} {procedure.Title?.Value}", "procedure.html", content);
    }

    private static ScriptArray Card(Procedure procedure, SiteData data, Scope scope)
    {
        var card = new ScriptArray();
        Add("Version", procedure.Version?.Value);
        Add("Status", ProcedureWords.Status(procedure));
        Add("Hash", data.Hashes.GetValueOrDefault(procedure.Id.Value));
        Add("For", ProcedureWords.AppliesTo(procedure));
        Add("Crew", ProcedureWords.Crew(procedure));
        Add("Time", ProcedureWords.TotalTime(scope));
        Add("Tools", string.Join(", ", scope.ToolLists.Select(t => t.Title?.Value ?? t.Id.Value)));
        Add("Basis", procedure.Basis?.Value);
        Add("Approved", string.Join("; ", procedure.Approvals.Select(a => $"{a.By?.Value}, {a.Role?.Value}, {a.Date?.Value}")));
        foreach (var translation in scope.Library.Translations.Where(t => t.Of.Value == procedure.Id.Value))
            Add(SheetLanguages.Spoken(translation.Language.Value), Translated(translation));
        return card;

        void Add(string label, string? value)
        {
            if (!string.IsNullOrEmpty(value))
                card.Add(new ScriptObject { ["label"] = label, ["value"] = value });
        }
    }

    private static string Translated(Translation translation) => string.Join(", ", new[]
    {
        translation.Translators.IsEmpty ? "translated" : $"translated by {Say.And(translation.Translators.Select(t => t.Value))}",
        translation.Compared is { } compared ? $"compared with the original by {compared.By?.Value}, {compared.Date?.Value}" : "",
    }.Where(t => t.Length > 0));

    private static ScriptObject Part(ProcedurePart part, Procedure procedure, FactRows rows, StepFigures figures) => new()
    {
        ["name"] = part.Name?.Value ?? "",
        ["before"] = Contract(part, FactWord.StartsWith),
        ["after"] = Contract(part, FactWord.EndsWith),
        ["prose"] = ProseHtml.Blocks(part.Prose),
        ["flow"] = procedure.IsJob ? figures.Overview : [],
        ["figures"] = procedure.IsJob ? [] : figures.Overview,
        ["sections"] = new ScriptArray(part.Sections.Select(s => Section(s, part, procedure, rows, figures))),
    };

    private static ScriptArray Contract(ProcedurePart part, FactWord word) => new(part.Facts.Where(f => f.Word == word).Select(f => DeclaredName.SpokenIn(f.Text.Value)));

    private static ScriptObject Section(Section section, ProcedurePart part, Procedure procedure, FactRows rows, StepFigures figures) => new()
    {
        ["heading"] = section.Heading?.Value ?? "",
        ["facts"] = rows.Of(section.Facts, null),
        ["prose"] = ProseHtml.Blocks(section.Prose),
        ["messages"] = Messages(section.Messages, rows.Signals),
        ["steps"] = new ScriptArray(section.Steps.Select(s => new ScriptObject
        {
            ["number"] = s.Number,
            ["name"] = s.NameWithStop,
            ["text"] = ProseHtml.Inlines(s.Text),
            ["messages"] = Messages(s.Messages, rows.Signals),
            ["facts"] = rows.Of(s.Facts, new StepInPlace(procedure, part, section, s, [])),
            ["remarks"] = new ScriptArray(s.Remarks.Select(r => ProseHtml.Inlines(r))),
            ["blocks"] = ProseHtml.Blocks(s.Blocks),
            ["figures"] = figures.For(s),
        })),
    };

    private static ScriptArray Messages(IEnumerable<SafetyMessage> messages, SignalScheme scheme) => new(messages.Select(m => new ScriptObject
    {
        ["word"] = m.Word.Value,
        ["kind"] = m.Signal is { } word ? SignalLook.Kind(word, scheme) : "unknown",
        ["alert"] = m.Signal is { } signal && scheme.IsForPeople(signal),
        ["nature"] = Say.Capital(m.Nature.Value),
        ["rest"] = ProseHtml.Inlines(m.Rest),
        ["avoid"] = new ScriptArray(m.Avoid.Select(a => ProseHtml.Inlines(a))),
    }));
}
