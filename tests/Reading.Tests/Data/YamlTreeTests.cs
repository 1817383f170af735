using System.Text;
using Witnessmark.Harness;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;

namespace Witnessmark.Reading.Tests.Data;

public sealed class YamlTreeTests
{
    [Theory]
    [InlineData("off")]
    [InlineData("0417")]
    [InlineData("40.10")]
    [InlineData("NO")]
    [InlineData("~")]
    [InlineData("2031-05-02")]
    [InlineData("1_000")]
    public void A_value_is_the_text_that_was_written(string written) =>
        Assert.Equal(written, Assert.IsType<DataText>(Read($"a: {written}\n").Entries[0].Value).Text);

    [Fact]
    public void A_value_knows_where_it_stands_also_behind_two_character_line_ends_and_wide_characters()
    {
        var map = Read("title: \U0001F600 ± µ\r\nbolts:\r\n  torque: 235 ± 12 N·m   # oiled\r\n");
        var torque = Assert.IsType<DataMap>(map.Find("bolts")!.Value).Find("torque")!;
        Assert.Equal("235 ± 12 N·m", torque.Value.At.Text);
        Assert.Equal((3, 11), (torque.Value.At.Start.Line, torque.Value.At.Start.Column));
    }

    [Fact]
    public void A_quoted_text_stands_inside_its_quotes()
    {
        var text = Assert.IsType<DataText>(Read("class: \"10.9\"\n").Entries[0].Value);
        Assert.Equal("\"10.9\"", text.At.Text);
        Assert.Equal("10.9", text.Located().At.Text);
    }

    [Fact]
    public void Front_matter_has_its_places_in_the_whole_file()
    {
        var source = new SourceText("a.md", "---\nprocedure: WB-40\ncrew: {mechanic: 1}\n---\n# Title\n");
        var findings = new FindingList();
        var map = YamlTree.Read(source, new TextSpan(4, source.Content.IndexOf("---\n#", StringComparison.Ordinal)), findings)!;
        Assert.Equal(0, findings.Count);
        Assert.Equal("WB-40", map.Find("procedure")!.Value.At.Text);
        Assert.Equal("{mechanic: 1}", map.Find("crew")!.Value.At.Text);
    }

    /// <summary>Every scalar of the demo and the trial, cut out at its span and read again, is the same text.</summary>
    [Fact]
    public void The_span_of_every_value_reads_again_as_that_value()
    {
        var seen = 0;
        var files = Repo.Files(Repo.OneBrake).Concat(Repo.Files(Repo.Trial));
        foreach (var file in files.Where(f => f.Path.EndsWith(".yaml", StringComparison.Ordinal)))
        {
            var source = new SourceText(file.Path, Encoding.UTF8.GetString(file.Bytes.Span));
            foreach (var text in Texts(ReadAll(source)))
            {
                var again = Assert.IsType<DataText>(Read($"x: {text.At.Text}\n").Entries[0].Value);
                Assert.Equal(text.Text, again.Text);
                seen++;
            }
        }
        Assert.True(seen > 2000, $"only {seen} values seen");
    }

    private static DataMap Read(string text) => ReadAll(new SourceText("a.yaml", text));

    private static DataMap ReadAll(SourceText source)
    {
        var findings = new FindingList();
        var map = YamlTree.Read(source, new TextSpan(0, source.Content.Length), findings);
        Assert.Empty(findings.InReadingOrder());
        return map!;
    }

    private static IEnumerable<DataText> Texts(DataNode node) => node switch
    {
        DataText text => [text],
        DataList list => list.Items.SelectMany(Texts),
        DataMap map => map.Entries.SelectMany(e => Texts(e.Value).Prepend(new DataText(e.Key.Value, e.Key.At))),
        _ => [],
    };
}
