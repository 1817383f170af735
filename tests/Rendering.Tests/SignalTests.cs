using System.Globalization;
using System.Text;
using Witnessmark.Compiler;
using Witnessmark.Harness;
using Witnessmark.Rendering.Html;
using Witnessmark.Rendering.Tests.Checklist;

namespace Witnessmark.Rendering.Tests;

/// <summary>Signal words on screen and in both vocabularies. What the browser makes of the style is measured in Browser.Tests.</summary>
public sealed class SignalTests
{
    private static readonly Lazy<Dictionary<string, string>> Military = new(() => Pipeline
        .Build(Pipeline.Check(Repo.Files(Repo.Path("tests", "Rendering.Tests", "Cases", "military"))), "0.0.0")
        .ToDictionary(f => f.Path, f => Encoding.UTF8.GetString(f.Bytes.Span)));

    public static TheoryData<string, string, string> Colours
    {
        get
        {
            var rows = new TheoryData<string, string, string>();
            foreach (var row in Csv.Reference("safety-colours.csv"))
                rows.Add(row["word"], row["panel"], row["letters"]);
            return rows;
        }
    }

    [Theory]
    [MemberData(nameof(Colours))]
    public void Letters_on_a_safety_colour_can_be_read(string word, string panel, string letters) =>
        Assert.True(Contrast(panel, letters) >= 4.5, $"{word}: {Contrast(panel, letters):0.0}");

    [Theory]
    [InlineData("#000000", "#ffffff", 21)]
    [InlineData("#777777", "#ffffff", 4.48)]
    public void The_measure_of_contrast_is_that_of_WCAG(string one, string other, double expected) => Assert.Equal(expected, Contrast(one, other), 0.01);

    [Fact]
    public void Paper_knows_no_safety_colour()
    {
        var css = Resources.Text("site/signals.css");
        Assert.Equal(css.IndexOf("@media screen{", StringComparison.Ordinal), css.IndexOf('{', StringComparison.Ordinal) - "@media screen".Length);
        Assert.DoesNotMatch("#(?!000|fff)[0-9a-f]{3,6}", Resources.Text("site/sheet.css"));
    }

    [Theory]
    [InlineData("sheets/wb-93-a4.html")]
    [InlineData("procedures/wb-93.html")]
    public void Military_words_stand_in_their_order_and_only_people_get_the_triangle(string path)
    {
        var html = Military.Value[path];
        var at = new[] { "military warning", "military caution", "military note" }.Select(k => html.IndexOf($"class=\"message {k}\"", StringComparison.Ordinal)).ToList();
        Assert.DoesNotContain(-1, at);
        Assert.Equal(at.Order(), at);
        Assert.Contains("<svg", Markup.Between(html, "class=\"message military warning\"", "</p>"), StringComparison.Ordinal);
        Assert.DoesNotContain("<svg", Markup.Between(html, "class=\"message military caution\"", "</p>"), StringComparison.Ordinal);
        Assert.DoesNotContain("<svg", Markup.Between(html, "class=\"message military note\"", "</p>"), StringComparison.Ordinal);
        Assert.Contains("NOTE</p>", html, StringComparison.Ordinal);
    }

    /// <summary>WCAG 2.2, relative luminance and contrast ratio.</summary>
    private static double Contrast(string one, string other)
    {
        var (a, b) = (Luminance(one), Luminance(other));
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    private static double Luminance(string hex)
    {
        double Part(int from)
        {
            var c = int.Parse(hex.AsSpan(from, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
            return c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4);
        }

        return (0.2126 * Part(1)) + (0.7152 * Part(3)) + (0.0722 * Part(5));
    }
}
