using System.Text;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;

namespace Witnessmark.Reading.Tests.Data;

public sealed class DecodeTests
{
    [Fact]
    public void A_byte_order_mark_is_left_out()
    {
        var (text, findings) = Decoded([0xEF, 0xBB, 0xBF, .. "machine: okr-34\n"u8]);
        Assert.Equal("machine: okr-34\n", text?.Content);
        Assert.Empty(findings);
    }

    [Fact]
    public void A_degree_sign_from_an_older_encoding_is_found_at_its_line_and_column()
    {
        var (text, findings) = Decoded([.. "machine: okr-34\nangle: 60 "u8, 0xB0, .. "\n"u8]);
        Assert.Null(text);
        var finding = Assert.Single(findings);
        Assert.Equal("text-encoding", finding.Rule.Name);
        Assert.Equal((2, 11), (finding.At.Start.Line, finding.At.Start.Column));
        Assert.Contains("Line 2, column 11", finding.Found, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sign_that_was_lost_before_is_found()
    {
        var finding = Assert.Single(Decoded("torque: 235 \uFFFD 12 N·m"u8.ToArray()).Findings);
        Assert.Equal("text-encoding", finding.Rule.Name);
        Assert.Equal(13, finding.At.Start.Column);
    }

    [Fact]
    public void Utf_16_is_refused_with_and_without_its_mark()
    {
        Assert.Equal("text-encoding", Assert.Single(Decoded(Encoding.Unicode.GetPreamble().Concat(Encoding.Unicode.GetBytes("machine: okr-34")).ToArray()).Findings).Rule.Name);
        Assert.Equal("text-encoding", Assert.Single(Decoded(Encoding.BigEndianUnicode.GetBytes("machine: okr-34")).Findings).Rule.Name);
    }

    [Fact]
    public void A_line_end_of_old_macs_is_refused_before_two_lines_run_into_one()
    {
        var (text, findings) = Decoded("machine: okr-34\rtitle: hauler\r"u8.ToArray());
        Assert.Null(text);
        var finding = Assert.Single(findings);
        Assert.Equal("text-encoding", finding.Rule.Name);
        Assert.Equal(15, finding.At.Span.Start);
        Assert.NotNull(Decoded("machine: okr-34\r\ntitle: hauler\r\n"u8.ToArray()).Text);
    }

    [Theory]
    [InlineData("\u202E", "direction")]
    [InlineData("\u200B", "no width")]
    [InlineData("\0", "zero byte")]
    [InlineData("\u001B", "control")]
    public void A_character_that_cannot_be_seen_is_found_and_left_out(string unseen, string called)
    {
        var (text, findings) = Decoded(Encoding.UTF8.GetBytes($"machine: okr-34\ntitle: OKR{unseen}-34\n"));
        Assert.Equal("machine: okr-34\ntitle: OKR-34\n", text?.Content);
        var finding = Assert.Single(findings);
        Assert.Equal("text-hidden", finding.Rule.Name);
        Assert.Equal((2, 11), (finding.At.Start.Line, finding.At.Start.Column));
        Assert.Contains(called, finding.Found, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_over_the_limit_is_refused_by_its_length_alone()
    {
        var findings = new FindingList();
        Assert.Null(Decode.Text(new RawFile("big.yaml", RawFile.Limit + 1, ReadOnlyMemory<byte>.Empty), findings));
        var finding = Assert.Single(findings.InReadingOrder());
        Assert.Equal("text-too-large", finding.Rule.Name);
        Assert.Contains("1000001 bytes", finding.Found, StringComparison.Ordinal);
    }

    private static (SourceText? Text, IReadOnlyList<Finding> Findings) Decoded(byte[] bytes)
    {
        var findings = new FindingList();
        var text = Decode.Text(RawFile.Of("a.yaml", bytes), findings);
        return (text, findings.InReadingOrder());
    }
}
