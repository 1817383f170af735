using Scriban.Runtime;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Site;

/// <summary>Pages written by hand. The language page ends with the compiler's own tables, so that none is written twice.</summary>
internal static class WrittenPages
{
    private const string LanguagePage = "language.html";

    public static OutputFile Render(WrittenPage page, PageFrame frame)
    {
        var language = page.Path == LanguagePage;
        return frame.Page(page.Path, page.Title, "written.html", new ScriptObject
        {
            ["title"] = page.Title,
            ["body"] = ProseHtml.Blocks(page.Body),
            ["facts"] = language ? Facts() : [],
            ["units"] = language ? Units() : [],
        });
    }

    private static ScriptArray Facts() => new(FactWords.All.Select(f => new ScriptObject
    {
        ["word"] = f.Spelling,
        ["where"] = f.Place switch { FactPlace.Heading => "heading", FactPlace.Step or FactPlace.Step | FactPlace.TranslatedStep => "step", FactPlace.TranslatedHeading | FactPlace.TranslatedStep => "translation", _ => "heading or step" },
        ["says"] = f.Says,
    }));

    private static ScriptArray Units() => new(UnitTable.All.GroupBy(u => u.Kind).Select(g => new ScriptObject
    {
        ["kind"] = g.Key,
        ["symbols"] = string.Join(", ", g.Select(u => u.Symbol)),
    }));
}
