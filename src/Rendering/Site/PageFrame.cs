using Scriban.Runtime;
using Witnessmark.Language.Text;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Site;

/// <summary>What every page shares: head, way round, standing notice, foot.</summary>
internal sealed class PageFrame(SiteData data)
{
    /// <summary>Stands where the workshop file says nothing of its own.</summary>
    public const string Notice = "The machine maker's service data, the site's rules, local law and licensed practice stand above this page. Stop where they disagree.";

    /// <param name="path">From the site's root: <c>procedures/wb-40.html</c>.</param>
    public OutputFile Page(string path, string title, string template, ScriptObject content)
    {
        var root = string.Concat(Enumerable.Repeat("../", path.Count(c => c == '/')));
        content["root"] = root;
        var model = new ScriptObject
        {
            ["root"] = root,
            ["title"] = title,
            ["language"] = data.Library.Workshop.Language?.Value ?? "en",
            ["workshop"] = data.Library.Workshop.Title?.Value ?? "Workshop",
            ["notice"] = data.Library.Workshop.Notice?.Value ?? Notice,
            ["version"] = data.ProgramVersion,
            ["jobs"] = data.Library.Procedures.Any(p => p.IsJob),
            ["content"] = new RawHtml(Templates.Render(template, content)),
        };
        return OutputFile.Of(path, Templates.Render("page.html", model));
    }
}
