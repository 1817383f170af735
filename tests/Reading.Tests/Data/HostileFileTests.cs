using System.Collections.Immutable;
using System.Text;
using CsCheck;
using Witnessmark.Harness;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;
using Witnessmark.Reading.Records;

namespace Witnessmark.Reading.Tests.Data;

/// <summary>Files that nobody wrote in good faith, or that a crash left half written: findings, never exceptions.</summary>
public sealed class HostileFileTests
{
    private static readonly RawFile[] Good =
    [
        .. Repo.Files(Repo.OneBrake).Concat(Repo.Files(Repo.Trial)).Concat(Repo.Files(Repo.Path("tests", "Reading.Tests", "Cases", "Data")))
            .Where(f => f.Path.EndsWith(".yaml", StringComparison.Ordinal)),
    ];

    private static readonly string[] Signs = ["{", "}", "[", "]", ":", ": ", "- ", "#", " #", "&a ", "*a", "!!x ", "\"", "'", "|", ">", "\n", "\r\n", "\t", "---\n", "? ", "<<", "%", "@", ",", "\0", "\u2028", "\uD83D", "  "];

    [Fact]
    public void A_damaged_file_never_breaks_the_reader_and_every_place_lies_in_it()
    {
        var damage = Gen.Select(Gen.Int[0, Good.Length - 1], Gen.Int[0, 100_000], Gen.Int[0, 12], Gen.Int[0, Signs.Length - 1], Gen.Int[1, 3]);
        damage.Sample(
            d =>
            {
                var text = Encoding.UTF8.GetString(Good[d.Item1].Bytes.Span);
                for (var i = 0; i < d.Item5; i++)
                    text = Damaged(text, (d.Item2 * (i + 1)) % text.Length, d.Item3, Signs[d.Item4]);
                foreach (var finding in Read(Encoding.UTF8.GetBytes(text)))
                    Assert.InRange(finding.At.Span.End, finding.At.Span.Start, finding.At.Source.Content.Length);
            },
            iter: 800);
    }

    [Theory]
    [InlineData("a: !<> x")]
    [InlineData("a: !<  > x")]
    [InlineData("a: !<a b> x")]
    public void A_tag_that_is_no_address_is_a_finding(string line) => Assert.Equal(["yaml-broken"], Rules($"machine: okr-34\n{line}\n"));

    [Theory]
    [InlineData(": ")]
    [InlineData("- ")]
    [InlineData("? ")]
    [InlineData("{")]
    [InlineData("!!<x y> ")]
    [InlineData("%")]
    public void A_sign_before_any_line_of_the_demo_leaves_it_read_or_found_never_gone(string sign)
    {
        foreach (var file in Repo.Files(Repo.OneBrake).Where(f => f.Path.EndsWith(".yaml", StringComparison.Ordinal)))
        {
            var lines = Encoding.UTF8.GetString(file.Bytes.Span).Split('\n');
            for (var i = 0; i < lines.Length; i++)
            {
                var indent = lines[i].Length - lines[i].TrimStart().Length;
                var source = new SourceText(file.Path, string.Join('\n', lines.Select((l, n) => n == i ? l.Insert(indent, sign) : l)));
                var findings = new FindingList();
                var map = YamlTree.Read(source, new TextSpan(0, source.Content.Length), findings);
                Assert.True(map is not null || findings.Count > 0, $"{file.Path}:{i + 1} is gone without a word");
            }
        }
    }

    [Fact]
    public void What_expands_without_end_is_refused()
    {
        var bomb = new StringBuilder("machine: okr-34\na: &a [x, x]\n");
        for (var c = 'b'; c < 'z'; c++)
            bomb.Append($"{c}: &{c} [*{(char)(c - 1)}, *{(char)(c - 1)}]\n");
        Assert.Contains("yaml-anchor", Rules(bomb.ToString()));
    }

    [Fact]
    public void What_is_nested_too_deep_is_refused()
    {
        Assert.Equal(["text-too-large"], Rules("machine: " + new string('[', 100_000)));
        Assert.Equal(["text-too-large"], Rules("machine:\n" + string.Concat(Enumerable.Range(1, 500).Select(i => new string(' ', i) + "a:\n"))));
    }

    [Fact]
    public void What_is_too_much_is_refused() =>
        Assert.Equal(["text-too-large"], Rules("machine: okr-34\n" + string.Concat(Enumerable.Range(1, 30_000).Select(i => $"k{i}: a\n"))));

    [Fact]
    public void An_empty_file_and_one_of_remarks_alone_say_nothing()
    {
        Assert.Equal(["yaml-broken"], Rules(""));
        Assert.Equal(["yaml-broken"], Rules("# only a remark\n"));
        Assert.Equal(["yaml-broken"], Rules("- a\n- b\n"));
        Assert.Equal(["yaml-broken"], Rules("machine\n"));
    }

    private static string Damaged(string text, int at, int cut, string sign) => text[..at] + sign + text[Math.Min(text.Length, at + cut)..];

    private static ImmutableArray<Finding> Read(byte[] bytes)
    {
        var findings = new FindingList();
        WorkshopReader.Read([RawFile.Of("a.yaml", bytes)], findings);
        SignOffReader.Read(RawFile.Of("a.yaml", bytes), findings);
        return findings.InReadingOrder();
    }

    private static IEnumerable<string> Rules(string text)
    {
        var findings = new FindingList();
        if (Decode.Text(RawFile.Of("a.yaml", Encoding.UTF8.GetBytes(text)), findings) is { } source)
            YamlTree.Read(source, new TextSpan(0, source.Content.Length), findings);
        return findings.InReadingOrder().Select(f => f.Rule.Name).Distinct();
    }
}
