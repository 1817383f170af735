using System.Collections.Immutable;
using Scriban.Runtime;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Site;

/// <summary>The site as one page: what it consists of.</summary>
public static class SitePages
{
    public static ImmutableArray<OutputFile> Render(SiteData data)
    {
        var frame = new PageFrame(data);
        return
        [
            OutputFile.Of("pages.css", Resources.Text("site/pages.css") + Resources.Text("site/signals.css") + Resources.Text("site/comparison.css") + Resources.Text("site/versions.css")),
            Index(data, frame),
            .. data.Library.Procedures.Select(p => ProcedurePage.Render(p, data, frame)),
            .. VersionPages.Render(data, frame),
            .. data.Library.Machines.Select(m => MachinePage.Render(m, data, frame)),
            .. data.Library.ToolLists.Select(t => ToolPage.Render(t, data, frame)),
            .. RulePages.Render(data, frame),
            .. data.Written.Select(w => WrittenPages.Render(w, frame)),
        ];
    }

    internal static string PathOf(Procedure procedure) => $"procedures/{FileName(procedure.Id.Value)}.html";

    internal static string PathOf(Machine machine) => $"machines/{FileName(machine.Id.Value)}.html";

    /// <summary>Ids are letters, digits and hyphens when they get here; anything else becomes a hyphen all the same.</summary>
    public static string FileName(string id)
    {
        var name = StepName.Slug(id);
        return name.Length == 0 ? "unnamed" : name;
    }

    private static OutputFile Index(SiteData data, PageFrame frame)
    {
        var library = data.Library;
        var content = new ScriptObject
        {
            ["jobs"] = new ScriptArray(library.Procedures.Where(p => p.IsJob).OrderBy(p => p.Id.Value, StringComparer.Ordinal).Select(p => ProcedureRow(p, data))),
            ["procedures"] = new ScriptArray(library.Procedures.Where(p => !p.IsJob).OrderBy(p => p.Id.Value, StringComparer.Ordinal).Select(p => ProcedureRow(p, data))),
            ["gone"] = new ScriptArray(VersionPages.Gone(data).Select(id => new ScriptObject { ["id"] = id, ["versions"] = VersionPages.PathOf(id, data) })),
            ["machines"] = new ScriptArray(library.Machines.Select(m => new ScriptObject
            {
                ["title"] = m.Title?.Value ?? m.Id.Value,
                ["path"] = PathOf(m),
                ["basis"] = m.Basis?.Value ?? "",
            })),
            ["tools"] = new ScriptArray(library.ToolLists.Select(t => new ScriptObject { ["title"] = t.Title?.Value ?? t.Id.Value, ["path"] = ToolPage.PathOf(t), ["says"] = ToolPage.Extent(t) })),
            ["rules"] = data.Rules.Length,
        };
        return frame.Page("index.html", library.Workshop.Title?.Value ?? "Workshop", "index.html", content);
    }

    private static ScriptObject ProcedureRow(Procedure procedure, SiteData data) => new()
    {
        ["id"] = procedure.Id.Value,
        ["title"] = procedure.Title?.Value ?? procedure.Id.Value,
        ["path"] = PathOf(procedure),
        ["version"] = procedure.Version?.Value ?? "",
        ["status"] = ProcedureWords.Status(procedure),
        ["hash"] = data.Hashes.GetValueOrDefault(procedure.Id.Value, ""),
        ["standing"] = Standing.Of(procedure, data.Library.Register, data.Hashes.GetValueOrDefault(procedure.Id.Value, "")).Word,
        ["versions"] = VersionPages.PathOf(procedure.Id.Value, data) ?? "",
        ["whom"] = ProcedureWords.AppliesTo(procedure),
        ["steps"] = procedure.Steps.Count(),
        ["time"] = ProcedureWords.TotalTime(data.Library.ScopeOf(procedure)),
        ["sheets"] = new ScriptArray(data.Sheets.GetValueOrDefault(procedure.Id.Value, []).Select(s => new ScriptObject { ["says"] = s.Says, ["path"] = s.Path })),
    };
}
