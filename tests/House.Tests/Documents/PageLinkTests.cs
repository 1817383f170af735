using System.Text.RegularExpressions;
using Witnessmark.Language.Model;

namespace Witnessmark.House.Tests.Documents;

/// <summary>Links between our pages lead to a page and to a heading of it, on a Git host as on the site.</summary>
public sealed partial class PageLinkTests
{
    private static IEnumerable<string> Pages => House.Files("site/pages", ".md");

    [Fact]
    public void Every_link_leads_to_a_page_and_a_heading() =>
        Assert.Empty(Pages.SelectMany(page => Dead(page, House.Read(page))));

    [Fact]
    public void Every_page_for_writers_is_led_to_from_the_language() =>
        Assert.Equal(["first-sheet.md", "glossary.md", "reference.md"], Links(House.Read("site/pages/language.md")).Select(l => l.File).Distinct().Order(StringComparer.Ordinal));

    [Fact]
    public void The_measure_sees_a_heading_that_is_not_there() =>
        Assert.Equal(["a.md: glossary.md#no-such-word", "a.md: nowhere.md"], Dead("a.md", "[x](glossary.md#no-such-word) [y](glossary.md#hub) [z](nowhere.md)"));

    private static IEnumerable<string> Dead(string page, string text) => Links(text)
        .Where(l => l.File.Length > 0 && !House.Exists($"site/pages/{l.File}") || (l.Heading.Length > 0 && !Headings(l.File.Length == 0 ? text : House.Read($"site/pages/{l.File}")).Contains(l.Heading)))
        .Select(l => $"{page}: {l.File}{(l.Heading.Length > 0 ? "#" : "")}{l.Heading}");

    private static IEnumerable<(string File, string Heading)> Links(string text) => Link().Matches(text).Select(m => (m.Groups[1].Value, m.Groups[2].Value));

    private static HashSet<string> Headings(string text) => [.. Heading().Matches(text.ReplaceLineEndings("\n")).Select(m => StepName.Slug(m.Groups[1].Value))];

    [GeneratedRegex(@"\]\(((?:[\w-]+\.md)?)(?:#([\w-]+))?\)")]
    private static partial Regex Link();

    [GeneratedRegex(@"(?m)^#{2,3} (.*)$")]
    private static partial Regex Heading();
}
