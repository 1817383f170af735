using CsCheck;
using Witnessmark.Language.Text;

namespace Witnessmark.Language.Tests;

public sealed class SourceTextTests
{
    private static Gen<string> Text => Gen.String[Gen.Char["ab \r\n"], 0, 40];

    [Theory]
    [InlineData("one\ntwo\n", 0, 1, 1)]
    [InlineData("one\ntwo\n", 3, 1, 4)] // the line end belongs to its line
    [InlineData("one\ntwo\n", 4, 2, 1)]
    [InlineData("one\ntwo\n", 8, 3, 1)] // behind the last line end
    [InlineData("one\r\ntwo", 5, 2, 1)]
    [InlineData("one\r\ntwo", 4, 1, 5)]
    [InlineData("one\ntwo", 7, 2, 4)] // the end, without a line end
    [InlineData("", 0, 1, 1)]
    public void A_place_is_counted_from_one(string content, int offset, int line, int column) =>
        Assert.Equal(new LineColumn(line, column), new SourceText("a.md", content).PositionOf(offset));

    [Theory]
    [InlineData("one\r\ntwo\r\n", 1, "one")]
    [InlineData("one\r\ntwo\r\n", 2, "two")]
    [InlineData("one\r\ntwo\r\n", 3, "")]
    [InlineData("one\ntwo", 2, "two")]
    [InlineData("", 1, "")]
    public void A_line_comes_without_its_line_end(string content, int number, string line) =>
        Assert.Equal(line, new SourceText("a.md", content).Line(number));

    [Theory]
    [InlineData("", 1)]
    [InlineData("one", 1)]
    [InlineData("one\n", 2)]
    [InlineData("one\r\ntwo", 2)]
    public void Lines_are_counted(string content, int lines) => Assert.Equal(lines, new SourceText("a.md", content).LineCount);

    [Fact]
    public void An_offset_outside_of_the_text_does_not_throw()
    {
        var source = new SourceText("a.md", "one\ntwo");

        Assert.Equal(2, source.PositionOf(99).Line);
        Assert.Equal(1, source.PositionOf(-1).Line);
    }

    [Fact]
    public void Every_offset_can_be_found_again_from_its_line_and_column() => Text.Sample(content =>
    {
        var source = new SourceText("a.md", content);
        for (var offset = 0; offset <= content.Length; offset++)
        {
            var at = source.PositionOf(offset);
            var start = content.Split('\n').Take(at.Line - 1).Sum(l => l.Length + 1);
            Assert.Equal(offset, start + at.Column - 1);
        }
    });

    [Fact]
    public void The_lines_together_are_the_text() => Text.Sample(content =>
    {
        var source = new SourceText("a.md", content);
        var lines = Enumerable.Range(1, source.LineCount).Select(source.Line);
        Assert.Equal(content.Split('\n').Select(l => l.TrimEnd('\r')), lines);
    });

    [Fact]
    public void A_part_of_a_place_stays_inside_it()
    {
        var place = new SourceText("a.md", "torque: 235 Nn").At(8, 14);

        Assert.Equal("235 Nn", place.Text);
        Assert.Equal("Nn", place.Part(4, 6).Text);
        Assert.Equal("Nn", place.Part(4, 60).Text);
    }

    [Fact]
    public void Two_spans_are_covered_by_the_shortest_that_holds_both() =>
        Assert.Equal(new TextSpan(2, 9), new TextSpan(5, 9).Cover(new TextSpan(2, 3)));
}
