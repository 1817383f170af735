using Scriban.Runtime;
using Witnessmark.Language.Text;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Site;

/// <summary>Pages of the house: how to write, what words mean, what changed.</summary>
internal static class WrittenPages
{
    public static OutputFile Render(WrittenPage page, PageFrame frame) => frame.Page(page.Path, page.Title, "written.html", new ScriptObject
    {
        ["title"] = page.Title,
        ["body"] = ProseHtml.Blocks(page.Body),
    });
}
