using System.Collections.Immutable;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Pages;
using Witnessmark.Records.Hashing;
using Witnessmark.Rendering.Html;
using Witnessmark.Rendering.Site;

namespace Witnessmark.Compiler;

/// <summary>Gathers what the site is made from.</summary>
internal static class SiteContent
{
    public static SiteData Of(Library library, ImmutableDictionary<string, ProcedureHash> hashes, ImmutableArray<Specimen> specimens, string programVersion) => new(
        library,
        hashes.ToImmutableDictionary(h => h.Key, h => h.Value.Short12),
        specimens.GroupBy(s => s.Identity.Procedure).ToImmutableDictionary(g => g.Key, g => g.SelectMany(s => s.Links).ToImmutableArray()),
        [.. Catalog.Rules.Select(Rule)],
        [.. HandWritten.Select(name => Written(name))],
        programVersion);

    private static ImmutableArray<string> HandWritten => ["first-sheet", "language", "reference", "glossary", "failure-modes", "sign-off", "trial-kit", "changelog"];

    private static RulePageData Rule(RuleInfo rule) =>
        new(rule, Catalog.Summary(rule.Name), PageReader.Read(new SourceText($"{rule.Name}.md", Catalog.Body(rule.Name))));

    private static WrittenPage Written(string name)
    {
        var blocks = PageReader.Read(new SourceText($"{name}.md", Resources.Text($"site/pages/{name}.md")));
        var title = blocks.OfType<SubHeading>().FirstOrDefault(h => h.Level == 1)?.Text.Plain() ?? name;
        return new WrittenPage($"{name}.html", title, [.. blocks.Where(b => b is not SubHeading { Level: 1 })]);
    }
}
