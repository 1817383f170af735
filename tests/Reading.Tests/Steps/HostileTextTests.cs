using System.Diagnostics;
using System.Text;
using CsCheck;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.References;
using Witnessmark.Reading.Steps;

namespace Witnessmark.Reading.Tests.Steps;

/// <summary>Whatever stands in a file: reading ends, in time, and says what is wrong instead of failing.</summary>
public sealed class HostileTextTests
{
    private const string Front = "---\nprocedure: WB-99\ntitle: x\nversion: 1.0.0\nstatus: draft\nmachine: okr-34\n---\n";

    /// <summary>Signs that mean something in Markdown, in the data language or in a fact.</summary>
    private static readonly string[] Bits =
    [
        "-", "---", "\n", "\n\n", "    ", "   ", "\t", ">", "> **WARNING: x** y", "> - hazard: ", "#", "## ", "# Part: ", "1. ", "99. ", "100. ", "**", "***", "_", "___", "`",
        "```", "~~~", "[", "]", "](", "![", "<", "<!--", "-->", "<b>", "&amp;", "&#0;", "|", "|---|", "{", "}", "{group}", ":", ": ", " = ", " is not ", " or ", ",", " at ",
        "\0", "\uFEFF", "\u202E", "\U0001F527", "é", "\r\n", "\\", "- by: ", "- time: 1 min", "- count: x = 99999999999", "=", "===", "- perform: this part ", "procedure: ", "&*x",
    ];

    private static readonly Gen<string> Bit = Gen.Int[0, Bits.Length - 1].Select(i => Bits[i]);

    private static readonly Gen<string> AnyText = Gen.OneOf(Bit, Gen.String[0, 6]).Array[0, 60].Select(string.Concat);

    [Fact]
    public void Any_text_is_read_or_refused_with_words() => AnyText.Sample(text => Survives(Front + text) && Survives(text), iter: 3000);

    [Fact]
    public void A_demo_procedure_with_any_slip_is_read_or_refused_with_words()
    {
        var files = ProcedureFiles.In("tests", "Workshops", "one-brake").Concat(ProcedureFiles.In("tests", "Workshops", "trial")).Select(ProcedureFiles.Source).ToArray();
        Gen.Select(Gen.Int[0, files.Length - 1].Select(i => files[i]), Gen.Double[0, 1], Gen.Int[0, 40], Bit)
            .Sample((file, where, cut, bit) => Survives(Slip(file.Content, where, cut, bit)), iter: 2000);
    }

    [Theory]
    [InlineData(">", 20_000)]
    [InlineData("> ", 20_000)]
    [InlineData("- ", 20_000)]
    [InlineData("1. ", 20_000)]
    [InlineData("*", 20_000)]
    [InlineData("*a _a ", 5_000)]
    [InlineData("**a", 5_000)]
    [InlineData("[", 20_000)]
    [InlineData("![", 20_000)]
    [InlineData("[a](", 5_000)]
    [InlineData("<", 20_000)]
    [InlineData("<a ", 5_000)]
    [InlineData("<!-- ", 5_000)]
    [InlineData("`", 20_000)]
    [InlineData("`a``", 5_000)]
    [InlineData("&", 20_000)]
    [InlineData("|a", 5_000)]
    [InlineData("a|\n", 5_000)]
    [InlineData("\n", 50_000)]
    [InlineData("#\n", 5_000)]
    [InlineData("1. **a**\n", 5_000)]
    [InlineData("    - by: a, ", 2_000)]
    [InlineData("- starts-with: a = b, ", 2_000)]
    [InlineData("- starts-with: a or ", 2_000)]
    [InlineData("- starts-with: a\n", 5_000)]
    [InlineData("[a]: b\n", 2_000)]
    public void The_same_thing_over_and_over_does_not_hold_the_house_up(string bit, int times)
    {
        var clock = Stopwatch.StartNew();
        Assert.True(Survives($"{Front}# T\n\n{string.Concat(Enumerable.Repeat(bit, times))}\n\n1. **Go on.**\n"));
        // measured under 1 s alone; the rest is room for a machine that is busy with other things
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(30), $"{clock.Elapsed}");
    }

    [Fact]
    public void A_text_that_is_nested_without_end_is_refused_with_words()
    {
        var findings = new FindingList();
        ProcedureReader.Read(new SourceText("wb-99.md", Front + new string('>', 5000) + " x"), findings);
        Assert.Equal("text-unreadable", Assert.Single(findings.InReadingOrder()).Rule.Name);
    }

    [Fact]
    public void A_text_longer_than_any_procedure_is_refused_before_it_costs_time()
    {
        var findings = new FindingList();
        ProcedureReader.Read(new SourceText("wb-99.md", Front + new string('[', ProcedureReader.MostCharacters)), findings);
        Assert.Equal("text-too-large", Assert.Single(findings.InReadingOrder()).Rule.Name);
    }

    private static string Slip(string text, double where, int cut, string bit)
    {
        var at = (int)(where * text.Length);
        return text[..at] + bit + text[Math.Min(at + cut, text.Length)..];
    }

    /// <summary>Reads, holds the names against an empty workshop, and looks whether every finding stands somewhere in the text.</summary>
    private static bool Survives(string text)
    {
        var findings = new FindingList();
        // a file comes through UTF-8: there are no half characters in it
        var source = new SourceText("wheel-end/wb-99.md", Encoding.UTF8.GetString(Encoding.UTF8.GetBytes(text)));
        var file = ProcedureReader.File(source, findings);
        var procedure = file as Procedure;
        if (procedure is not null)
            ReferenceCheck.Check(new Library(new Workshop(source, new DataMap([], source.At(0, 0))), Items<Machine>.None, Items<ToolList>.None, new Items<Procedure>([procedure])), findings);
        return findings.InReadingOrder().All(f => f.At.Text.Length >= 0 && f.Found.Length > 0 && f.Why.Length > 0 && f.PutRight.Length > 0)
            && (file is not null || findings.Count > 0);
    }
}
