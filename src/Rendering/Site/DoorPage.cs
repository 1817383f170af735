using System.Collections.Immutable;
using Scriban.Runtime;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Site;

/// <summary>Where workshops stand side by side: the page with a door to the site of each.</summary>
public static class DoorPage
{
    private const string Template = "doors.html";

    /// <param name="workshops">With the folder of the output that holds the site of each.</param>
    public static ImmutableArray<OutputFile> Render(ImmutableArray<(string Folder, Library Library)> workshops, string programVersion) =>
    [
        OutputFile.Of("pages.css", Resources.Text("site/pages.css")),
        OutputFile.Of("index.html", Templates.Render(Template, new ScriptObject
        {
            ["title"] = Say.Count(workshops.Length, "workshop"),
            ["notice"] = PageFrame.Notice,
            ["version"] = programVersion,
            ["workshops"] = new ScriptArray(workshops.Select(w => Row(w.Folder, w.Library))),
        })),
    ];

    private static ScriptObject Row(string folder, Library library) => new()
    {
        ["title"] = library.Workshop.Title?.Value ?? folder,
        ["path"] = $"{Uri.EscapeDataString(folder)}/index.html",
        ["machines"] = Say.And(library.Machines.Select(m => m.Title?.Value ?? m.Id.Value)),
        ["extent"] = $"{Say.Count(library.Procedures.Count, "procedure")}, {Say.Count(library.Procedures.Sum(p => p.Steps.Count()), "step")}",
    };
}
