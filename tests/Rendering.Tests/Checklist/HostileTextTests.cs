using Witnessmark.Rendering.Checklist;

namespace Witnessmark.Rendering.Tests.Checklist;

public class HostileTextTests
{
    private const string Attack = "</style></title><script>alert(1)</script>\"'&";

    [Fact]
    public void What_an_author_writes_stays_words()
    {
        var library = Demo.Read(
            ("wheel-end/wb-40.md", "title: Build the disc stack and close it", "title: " + Quoted(Attack)),
            ("workshop.yaml", "help: radio 4", "help: </style><script>alert(1)</script>radio 4"),
            ("machines/okr-34.yaml", "wrong part or swarf", "<img src=x onerror=alert(1)> or swarf"),
            ("wheel-end/wb-40.md", "parts in ___", "<b onclick=x>parts</b> in ___"));
        Harmless(SheetPage.Render(Demo.Plan(library), Demo.Issued, Paper.A4, Words.English));
    }

    [Fact]
    public void What_is_said_about_the_print_stays_words()
    {
        var identity = new SheetIdentity(Attack, Attack, Attack, "<s>", Attack, Attack, Attack, Attack, Attack);
        Harmless(SheetPage.Render(Demo.Plan(), identity, Paper.A4, Words.English));
    }

    [Theory]
    [InlineData("a\"b", "\"a\\000022b\"")]
    [InlineData("</style>", "\"\\00003c\\00002fstyle\\00003e\"")]
    [InlineData("\\", "\"\\00005c\"")]
    [InlineData("a\nb", "\"a\\00000ab\"")]
    [InlineData("😀", "\"\\01f600\"")]
    public void A_text_in_the_page_margin_cannot_end_its_string(string text, string expected) => Assert.Equal(expected, PageRules.Quote(text));

    private static void Harmless(string html)
    {
        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<img", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<b onclick", html, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(1, Markup.Count(html, "</style>"));
        Assert.Equal(1, Markup.Count(html, "</head>"));
        Assert.Contains("&lt;script&gt;alert(1)", html, StringComparison.Ordinal);
    }

    private static string Quoted(string text) => "\"" + text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal) + "\"";
}
