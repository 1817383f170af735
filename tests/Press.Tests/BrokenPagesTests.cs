using System.Text.RegularExpressions;
using Witnessmark.Press.Tests.Proof;

namespace Witnessmark.Press.Tests;

/// <summary>Sheets that were made wrong on purpose: the proof must find each, where it is.</summary>
[Collection("press")]
public sealed partial class BrokenPagesTests(Room room)
{
    /// <summary>What was done wrong, how, the rule that it breaks, and the step on whose page.</summary>
    public static TheoryData<string, string, string, string> Wrong => new()
    {
        { "a row goes on to the next page", "#step-11{break-inside:auto} #step-11 .line:nth-of-type(2){break-before:page}", nameof(PageRule.Row), "11/5" },
        { "a grid of readings goes on to the next page", "#step-2{break-inside:auto} #step-2 .tables{display:block} #step-2 tr:nth-child(3){break-before:page}", nameof(PageRule.Row), "2/9" },
        { "a ladder goes on to the next page", "#step-9{break-inside:auto} #step-9 :is(.ladder,.rungs){display:block} #step-9 li:nth-child(4){break-before:page}", nameof(PageRule.Row), "9/6" },
        { "a bolt circle goes on to the next page", "#step-16-6{break-inside:auto} #step-16-6 .passes{display:block} #step-16-6 .run:nth-child(4){break-before:page}", nameof(PageRule.Row), "16.6/0" },
        { "a message stands below its step", ".reach{display:flex;flex-direction:column-reverse}", nameof(PageRule.Message), "11/5" },
        { "a message is left behind on the page before", ".reach,.warns,.held{display:block} #step-12{break-before:page}", nameof(PageRule.Message), "12/3" },
        { "a message in force is not said again", ".reach,.warns,.held{display:block}", nameof(PageRule.Repeated), "9/6" },
        { "a row stands on the one before", "#step-7{margin-top:-9mm}", nameof(PageRule.Overlap), "7/0" },
        { "words cross the line of their cell", "#step-8 .cell{width:8mm;min-width:0;margin-right:8mm;white-space:nowrap;font-size:18pt}", nameof(PageRule.Overlap), "8/8" },
        { "rows run into the foot", ".step{position:relative;top:32mm}", nameof(PageRule.Inside), "" },
        { "words run into the foot", "@page{margin-bottom:8mm!important}", nameof(PageRule.Margins), "1/2" },
        { "boxes run out at the side", "#step-6 .boxes{position:relative;left:9mm}", nameof(PageRule.Inside), "6/1" },
        { "a box is missing", "#step-5 .second .box{display:none}", nameof(PageRule.Boxes), "5/3" },
        { "a box is too low to write in", "#step-7 .box{height:6mm}", nameof(PageRule.Boxes), "7/0" },
        { "a name is not printed", "#step-13 .words b{visibility:hidden}", nameof(PageRule.Text), "13/1" },
        { "a step is not printed", "#step-14{display:none}", nameof(PageRule.Code), "" },
        { "the foot does not say which sheet it is", "@page{@bottom-left{content:\"Help\"}}", nameof(PageRule.Margins), "1/2" },
        { "the foot runs off the paper", "@page{@bottom-left{font-size:20pt!important;line-height:22pt!important}}", nameof(PageRule.Margins), "9/6" },
        { "no page says which set it belongs to", "@page{@top-right{content:\"\"}}", nameof(PageRule.Margins), "8/8" },
        { "every page says that it is the first", "@page{@top-center{content:\"sheet 1 of 7\"}}", nameof(PageRule.Margins), "9/6" },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public async Task It_is_found_that(string what, string style, string rule, string step)
    {
        var print = Prints.Wb40;
        var pdf = await room.Print(print with { Sheet = print.Sheet.With(style) });
        var found = ProvedPages.Broken(pdf, print);

        Assert.True(found.Any(b => b.Rule.ToString() == rule && (step.Length == 0 || PageOf(step, pdf, print) == b.Page)), $"{what}, of {rule} at {step}; found:\n{string.Join('\n', found)}");
    }

    [Fact]
    public async Task It_is_found_that_a_step_stands_there_twice()
    {
        var print = Prints.Wb40;
        var row = Row().Match(print.Sheet.Html).Value;
        var pdf = await room.Print(print with { Sheet = print.Sheet with { Html = print.Sheet.Html.Replace(row, row + row, StringComparison.Ordinal) } });

        Assert.Contains(ProvedPages.Broken(pdf, print), b => b.Rule == PageRule.Code && b.What.StartsWith("step 8/8 stands on pages", StringComparison.Ordinal));
    }

    [Fact]
    public async Task It_is_found_that_a_page_has_the_code_of_another_sheet()
    {
        var print = Prints.Wb40;
        var pdf = await room.Print(print with { Sheet = print.Sheet with { Code = print.Code with { Says = "WB-40 2.0.0 3F9AC21B77DE" } } });

        Assert.Equal(7, ProvedPages.Broken(pdf, print).Count(b => b.Rule == PageRule.SquareCode));
    }

    [Fact]
    public async Task It_is_found_that_the_code_is_too_small_to_photocopy()
    {
        var print = Prints.Wb40;
        var small = print with { Sheet = print.Sheet with { Code = print.Code with { Size = 16 } } };

        Assert.Contains(ProvedPages.Broken(await room.Print(small), small), b => b.Rule == PageRule.SquareCode && b.What.Contains("0.43 mm", StringComparison.Ordinal));
    }

    private static int PageOf(string step, ReadOnlyMemory<byte> pdf, PlannedPrint print) =>
        ProvedPages.Pages(pdf, print).First(p => p.Text.Contains(step, StringComparison.Ordinal)).Number;

    [GeneratedRegex("<article class=\"step[^>]*id=\"step-8\">.*?</article>", RegexOptions.Singleline)]
    private static partial Regex Row();
}
