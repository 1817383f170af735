using Scriban.Runtime;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Site;

/// <summary>A page a rule, and the list of them by topic.</summary>
internal static class RulePages
{
    public static IEnumerable<OutputFile> Render(SiteData data, PageFrame frame) =>
        data.Rules.Select(r => Page(r, frame)).Prepend(List(data, frame));

    private static OutputFile List(SiteData data, PageFrame frame)
    {
        var content = new ScriptObject
        {
            ["count"] = data.Rules.Length,
            ["topics"] = new ScriptArray(data.Rules.GroupBy(r => r.Rule.Topic).Select(g => new ScriptObject
            {
                ["name"] = g.Key,
                ["rules"] = new ScriptArray(g.Select(r => new ScriptObject { ["name"] = r.Rule.Name, ["summary"] = r.Summary, ["severity"] = r.Rule.Severity.Word() })),
            })),
        };
        return frame.Page("rules/index.html", "Rules", "rules.html", content);
    }

    private static OutputFile Page(RulePageData page, PageFrame frame) => frame.Page($"rules/{page.Rule.Name}.html", page.Rule.Name, "rule.html", new ScriptObject
    {
        ["name"] = page.Rule.Name,
        ["topic"] = page.Rule.Topic,
        ["severity"] = page.Rule.Severity.Word(),
        ["summary"] = page.Summary,
        ["body"] = ProseHtml.Blocks(page.Body),
    });
}
