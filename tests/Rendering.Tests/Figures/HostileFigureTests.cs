namespace Witnessmark.Rendering.Tests.Figures;

/// <summary>Whatever somebody writes into the data stays words inside the paper.</summary>
public sealed class HostileFigureTests
{
    private static readonly string[] Attacks =
    [
        "</text></svg><script>alert(1)</script>",
        "\"/><image href=\"http://x/\" onload='x'/>",
        "&lt;b&gt; &amp; ]]> <!-- -->",
        "\u202Egnol",
        new string('W', 400),
        string.Join(' ', Enumerable.Repeat("long words without an end", 40)),
        "😀😀😀😀😀😀😀😀😀😀😀😀😀😀😀😀😀😀😀😀😀😀😀😀😀😀😀😀😀😀",
    ];

    public static TheoryData<string, string> Words => [.. from name in FigureCase.Names from attack in Attacks select (name, attack)];

    [Theory]
    [MemberData(nameof(Words))]
    public void It_is_drawn_as_words(string name, string attack)
    {
        var svg = Drawn.Of(FigureCase.Read(name).With(attack));
        var sketch = new Sketch(svg);
        Assert.DoesNotContain("<script", svg, StringComparison.Ordinal);
        Assert.DoesNotContain("<image", svg, StringComparison.Ordinal);
        Assert.Empty(sketch.All.Where(b => !b.Inside(sketch.View)).Select(b => b.What));
        Assert.Empty(sketch.Texts.SelectMany((a, i) => sketch.Texts.Skip(i + 1).Where(a.Overlaps).Select(b => $"{a.What} / {b.What}")));
    }
}
