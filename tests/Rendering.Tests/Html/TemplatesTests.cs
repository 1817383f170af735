using Scriban.Runtime;
using Scriban.Syntax;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Tests.Html;

public class TemplatesTests
{
    private const string Hostile = "<script>alert('x')</script> & \"quoted\"";
    private const string Harmless = "&lt;script&gt;alert(&#39;x&#39;)&lt;/script&gt; &amp; &quot;quoted&quot;";

    [Theory]
    [InlineData("<p>{{ text }}</p>", "<p>" + Harmless + "</p>")]
    [InlineData("<p title=\"{{ text }}\">", "<p title=\"" + Harmless + "\">")]
    [InlineData("{{ for t in list }}<li>{{ t }}{{ end }}", "<li>" + Harmless)]
    [InlineData("{{ step.name }}", Harmless)]
    [InlineData("{{ text + text }}", Harmless + Harmless)]
    [InlineData("{{ func box(label) }}<b>{{ label }}</b>{{ end }}{{ box text }}", "<b>" + Harmless + "</b>")]
    public void Text_is_escaped_wherever_a_template_writes_it(string template, string expected) =>
        Assert.Equal(expected, Render(template));

    [Fact]
    public void Only_markup_of_our_own_passes() => Assert.Equal("<svg/>&lt;svg/&gt;", Render("{{ figure }}{{ written }}"));

    [Theory]
    [InlineData("{{ absent }}")]
    [InlineData("{{ step.absent }}")]
    [InlineData("{{ if absent }}x{{ end }}")]
    [InlineData("{{ date.now }}")]
    [InlineData("{{ include 'sheet.html' }}")]
    public void A_name_that_the_model_does_not_have_is_an_error(string template) =>
        Assert.Throws<ScriptRuntimeException>(() => Render(template));

    [Fact]
    public void What_is_empty_is_not_there() =>
        Assert.Equal("no no yes", Render("{{ if nothing }}yes{{ else }}no{{ end }} {{ if none }}yes{{ else }}no{{ end }} {{ if list }}yes{{ end }}"));

    [Fact]
    public void A_part_sees_its_own_model_only_and_comes_back_every_time()
    {
        var limits = new ScriptObject { ["native"] = "<1 mm>", ["beside"] = "", ["label"] = "" };
        var model = new ScriptObject { ["limits"] = limits, ["label"] = "not for the part" };
        const string Once = "<span class=\"limit\"><span class=\"native\">&lt;1 mm&gt;</span></span>";
        var template = Templates.ParseText("{{ part 'sheet-limits.html' limits }}{{ part 'sheet-limits.html' limits }}", "test");
        Assert.Equal(Once + Once, Templates.RenderText(template, model));
        limits.Remove("label");
        Assert.Throws<ScriptRuntimeException>(() => Templates.RenderText(template, model));
    }

    [Fact]
    public void A_number_is_written_with_a_point() => Assert.Equal("0.05 12405", Render("{{ small }} {{ large }}"));

    [Fact]
    public void A_text_cannot_turn_the_reading_direction_or_carry_control_signs() =>
        Assert.Equal("a\uFFFDb\uFFFDc\u0440", Escape.Text("a\u202Eb\u0000c\u0440"));

    [Fact]
    public void Every_template_parses() =>
        Assert.All(Resources.Names.Where(n => n.StartsWith("templates/", StringComparison.Ordinal)), n => Templates.ParseText(Resources.Text(n), n));

    [Fact]
    public void The_hash_of_the_templates_is_the_same_every_time_and_differs_between_sets()
    {
        Assert.Equal(Resources.Hash("site/"), Resources.Hash("site/"));
        Assert.Matches("^[0-9a-f]{64}$", Resources.Hash("site/"));
        Assert.NotEqual(Resources.Hash("site/"), Resources.Hash("nothing/"));
    }

    private static string Render(string template) => Templates.RenderText(Templates.ParseText(template, "test"), new ScriptObject
    {
        ["text"] = Hostile,
        ["list"] = new ScriptArray { Hostile },
        ["step"] = new ScriptObject { ["name"] = Hostile },
        ["figure"] = new RawHtml("<svg/>"),
        ["written"] = "<svg/>",
        ["nothing"] = "",
        ["none"] = new ScriptArray(),
        ["small"] = 0.05m,
        ["large"] = 12405,
    });
}
