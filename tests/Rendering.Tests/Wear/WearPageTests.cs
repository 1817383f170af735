using System.Text;
using System.Text.RegularExpressions;
using Witnessmark.Compiler;
using Witnessmark.Harness;
using Witnessmark.Language.Text;
using Witnessmark.Rendering.Tests.Figures;

namespace Witnessmark.Rendering.Tests.Wear;

/// <summary>Sign-offs in, wear on the machine's page out: complete ones as points, the others by name with the reason.</summary>
public sealed partial class WearPageTests
{
    private const string First = "2031-06-11-unit-14-CL.yaml";
    private const string Second = "2033-07-19-unit-14-CL.yaml";

    private static readonly Lazy<string> Page = new(() => Built(
        Record(First, First, ("record: 2031-06-11", "record: <script>alert(1)</script>")),
        Record(Second),
        Record(Second, "a-copy-of-it.yaml"),
        Record(First, "<b>of another version.yaml", ("hash: ", "hash: 0000 0000 0000 #")),
        RawFile.Of("records/not-one.yaml", Encoding.UTF8.GetBytes("tools: crane-truck\n")),
        RawFile.Of("records/bytes.yaml", [0xFF, 0xFE, 0x00]),
        new RawFile("records/huge.yaml", RawFile.Limit + 1, ReadOnlyMemory<byte>.Empty)));

    private static string Section => Page.Value[Page.Value.IndexOf("<h2>Wear", StringComparison.Ordinal)..Page.Value.IndexOf("<h2>Parts", StringComparison.Ordinal)];

    [Fact]
    public void Two_sign_offs_of_one_wheel_end_make_a_trend_with_its_points_in_words()
    {
        var drawing = SiteDrawings.Of(Page.Value)["wear-no-1"];
        Assert.Equal(2, drawing.Named("circle").Count());
        Assert.Contains("12405 h: 3.16 mm; 16670 h: 3.13 mm; limit 3.10 mm", Section);
        Assert.DoesNotContain("wear-no-2", SiteDrawings.Of(Page.Value).Keys);
    }

    [Theory]
    [InlineData("records/a-copy-of-it.yaml", "complete: Another record of the same copy came before it.")]
    [InlineData("records/&lt;b&gt;of another version.yaml", "refused: ")]
    [InlineData("records/not-one.yaml", "refused: ")]
    [InlineData("records/bytes.yaml", "refused: ")]
    [InlineData("records/huge.yaml", "refused: ")]
    public void What_gives_no_point_is_named_with_its_reason(string path, string why) =>
        Assert.Contains(LeftOut(), l => l.StartsWith($"{path}, {why}", StringComparison.Ordinal) && l.Length > path.Length + "refused: ".Length + 10);

    [Fact]
    public void How_many_gave_no_point_is_said()
    {
        Assert.Equal(5, LeftOut().Count);
        Assert.Contains("5 records gave no point.", Section);
    }

    [Fact]
    public void Nothing_that_was_typed_is_markup()
    {
        Assert.Contains("&lt;script&gt;alert(1)&lt;/script&gt; unit 14 CL WB-40", Section);
        Assert.DoesNotContain("<script", Page.Value);
        Assert.DoesNotContain("<b>", Page.Value);
    }

    [Fact]
    public void One_sign_off_makes_no_trend_and_none_makes_no_section()
    {
        var one = Built(Record(First));
        Assert.Contains("One reading so far, no trend: unit 14 CL, plate thickness, least 3.16 mm at 12405 h.", one);
        Assert.DoesNotContain("wear-no-1", one);
        Assert.DoesNotContain("<h2>Wear", Built());
    }

    private static List<string> LeftOut() => [.. Item().Matches(Section).Select(m => m.Groups[1].Value.Replace("<strong>", "").Replace("</strong>", ""))];

    private static string Built(params RawFile[] records)
    {
        var files = Pipeline.Build(Pipeline.Check(Repo.Files(Repo.OneBrake)), "0.0.0", records);
        return Encoding.UTF8.GetString(files.Single(f => f.Path == "machines/okr-34.html").Bytes.Span);
    }

    private static RawFile Record(string name, string? path = null, params (string From, string To)[] changes)
    {
        var text = Repo.Read("tests", "Workshops", "one-brake", "records", name);
        foreach (var (from, to) in changes)
        {
            Assert.Contains(from, text);
            text = text.Replace(from, to);
        }
        return RawFile.Of($"records/{path ?? name}", Encoding.UTF8.GetBytes(text));
    }

    [GeneratedRegex("<li>(.*?)</li>")]
    private static partial Regex Item();
}
