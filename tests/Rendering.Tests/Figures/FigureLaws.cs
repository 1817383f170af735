using System.Globalization;
using Witnessmark.Harness;

namespace Witnessmark.Rendering.Tests.Figures;

/// <summary>What holds for every drawing, whatever it shows.</summary>
public sealed class FigureLaws
{
    private const double ElevenPoints = 11 * 25.4 / 72;
    private const double ThinnestStroke = 0.35;

    public static TheoryData<string> Cases => [.. FigureCase.Names];

    [Theory]
    [MemberData(nameof(Cases))]
    public void It_is_what_was_approved(string name) =>
        Approved.Check($"Rendering.Tests/Figures/Approved/{name}.svg", Svg(name).Replace("><", ">\n<", StringComparison.Ordinal));

    [Theory]
    [MemberData(nameof(Cases))]
    public void Nothing_lies_outside_the_paper(string name)
    {
        var sketch = new Sketch(Svg(name));
        Assert.NotEmpty(sketch.All);
        Assert.Empty(sketch.All.Where(b => !b.Inside(sketch.View)));
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void No_word_lies_over_another(string name)
    {
        var texts = new Sketch(Svg(name)).Texts;
        Assert.NotEmpty(texts);
        Assert.Empty(texts.SelectMany((a, i) => texts.Skip(i + 1).Where(a.Overlaps).Select(b => $"{a.What} / {b.What}")));
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Words_can_be_read_and_lines_photocopied(string name)
    {
        var elements = new Sketch(Svg(name)).Elements.ToList();
        Assert.All(Attributes("font-size"), size => Assert.True(size >= ElevenPoints, $"{size} mm"));
        Assert.All(Attributes("stroke-width"), stroke => Assert.True(stroke >= ThinnestStroke, $"{stroke} mm"));

        IEnumerable<double> Attributes(string attribute) =>
            elements.Select(e => e.Attribute(attribute)?.Value).OfType<string>().Select(v => double.Parse(v, CultureInfo.InvariantCulture));
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void It_is_black_on_white(string name)
    {
        var paints = new Sketch(Svg(name)).Elements.SelectMany(e => e.Attributes()).Where(a => a.Name.LocalName is "fill" or "stroke").Select(a => a.Value).Distinct();
        Assert.Empty(paints.Except(["#000", "#fff", "none", $"url(#{name}-hatch)"]));
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void It_says_what_it_is_to_those_who_do_not_see_it(string name)
    {
        var root = new Sketch(Svg(name)).Elements.First();
        Assert.Equal("img", root.Attribute("role")?.Value);
        var named = root.Attribute("aria-labelledby")!.Value.Split(' ').Select(id => root.Elements().Single(e => e.Attribute("id")?.Value == id)).ToList();
        Assert.Equal(["title", "desc"], named.Select(e => e.Name.LocalName));
        Assert.All(named, e => Assert.NotEqual("", e.Value.Trim()));
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void It_fetches_nothing_and_runs_nothing(string name)
    {
        var elements = new Sketch(Svg(name)).Elements.ToList();
        string[] drawn = ["svg", "title", "desc", "defs", "pattern", "rect", "circle", "polyline", "polygon", "text"];
        Assert.Empty(elements.Select(e => e.Name.LocalName).Except(drawn));
        Assert.Empty(elements.SelectMany(e => e.Attributes()).Where(a => a.Name.LocalName.StartsWith("on", StringComparison.Ordinal) || a.Name.LocalName is "href" or "style"));
    }

    [Fact]
    public void No_name_is_given_twice_on_a_page_of_all_drawings()
    {
        var ids = FigureCase.Names.SelectMany(n => new Sketch(Svg(n)).Elements).Select(e => e.Attribute("id")?.Value).OfType<string>().ToList();
        Assert.True(ids.Count >= 2 * FigureCase.Names.Count());
        Assert.Equal(ids.Count, ids.Distinct().Count());
    }

    private static string Svg(string name) => Drawn.Of(FigureCase.Read(name));
}
