using Witnessmark.Press.Tests.Proof;
using Witnessmark.Rendering.Checklist;

namespace Witnessmark.Press.Tests;

/// <summary>Cards and tags that were made wrong on purpose.</summary>
[Collection("press")]
public sealed class BrokenCardAndTagPagesTests(Room room)
{
    public static TheoryData<string, string, string, string> WrongCards => new()
    {
        { "a line goes on to the next page", ".line{break-inside:auto} .line .dials{break-before:page}", nameof(PageRule.Row), "all of step" },
        { "a heading stays behind", "h2{break-after:page}", nameof(PageRule.Row), "stands there without its numbers" },
        { "a line stands on the one before", ".line+.line{margin-top:-6mm}", nameof(PageRule.Overlap), "stand on or against each other" },
        { "a number runs into the one beside it", ".few{grid-template-columns:repeat(3,9mm)} .few li{white-space:nowrap}", nameof(PageRule.Overlap), "stand on or against each other" },
        { "words run into the foot", "@page{margin-bottom:8mm!important}", nameof(PageRule.Margins), "the foot says" },
        { "a number is not printed", ".number{visibility:hidden}", nameof(PageRule.Text), "" },
        { "it asks for a value", ".hint::after{content:\"\";display:inline-block;width:20mm;height:10mm;border:.5mm solid #000}", nameof(PageRule.Boxes), "empty boxes" },
        { "the foot does not say which card it is", "@page{@bottom-left{content:\"Help\"!important}}", nameof(PageRule.Margins), "the foot says" },
        { "the head does not say which copy it is", "@page{@top-right{content:\"\"!important}}", nameof(PageRule.Margins), "the head says" },
        { "a hole is missing", "@page{@left-middle{content:\"\"!important}}", nameof(PageRule.Margins), "2 holes to punch" },
    };

    public static TheoryData<string, string, string, string> WrongTags => new()
    {
        { "a tag goes on to the next page", ".cut{break-inside:auto;height:110mm} .stub,.cut footer{break-before:page}", nameof(PageRule.Row), "stands on pages" },
        { "a tag runs off the paper", ".cut{height:86mm}", nameof(PageRule.Inside), "runs out of the print area" },
        { "the words are more than the tag holds", ".cut p,.cut h2{font-size:26pt;line-height:30pt!important}", nameof(PageRule.Overlap), "" },
        { "two stubs stand on each other", ".stub{margin-top:-9mm}", nameof(PageRule.Overlap), "stand on or against each other" },
        { "a tag stands outside its frame", ".device{position:relative;left:12mm}", nameof(PageRule.Inside), "is not inside a frame to cut" },
        { "a tag has no frame to cut", ".cut{border:0!important}", nameof(PageRule.Inside), "is not inside a frame to cut" },
        { "a tag does not say which print it belongs to", ".cut footer p:first-child{display:none}", nameof(PageRule.Margins), "does not say" },
        { "a tag does not say what stands above it", ".cut footer p:last-child{visibility:hidden}", nameof(PageRule.Margins), "does not say" },
        { "a leaf does not say which one it is", ".leaf .head{display:none}", nameof(PageRule.Margins), "the head of the leaf says" },
        { "a box is missing", ".stub .box{display:none}", nameof(PageRule.Boxes), "empty boxes" },
        { "a leaf has no code", ".leaf>header svg{display:none}", nameof(PageRule.SquareCode), "says nothing" },
        { "words stand on the code", ".leaf .identity{position:relative;left:95mm;white-space:nowrap}", nameof(PageRule.SquareCode), "words stand on the square code" },
        { "the code is too small", ".leaf>header svg{width:16mm;height:16mm}", nameof(PageRule.SquareCode), "mm wide" },
    };

    [Theory]
    [MemberData(nameof(WrongCards))]
    public Task It_is_found_of_a_card_that(string what, string style, string rule, string says) =>
        Find(Prints.Card(Prints.Wb40, Paper.A4), what, style, rule, says);

    [Theory]
    [MemberData(nameof(WrongTags))]
    public Task It_is_found_of_a_tag_that(string what, string style, string rule, string says) =>
        Find(Prints.Tags(Prints.Wb40, Paper.Letter).Single(), what, style, rule, says);

    [Fact]
    public async Task It_is_found_that_a_card_has_the_code_of_a_sheet()
    {
        var card = Prints.Card(Prints.Wb40, Paper.A4);
        var pdf = await room.Print(card with { Sheet = card.Sheet with { Code = Prints.Wb40.Code } });

        Assert.Contains(ProvedPages.Broken(pdf, card), b => b.Rule == PageRule.SquareCode);
    }

    private async Task Find(PlannedPrint print, string what, string style, string rule, string says)
    {
        var found = ProvedPages.Broken(await room.Print(print with { Sheet = print.Sheet.With(style) }), print);

        Assert.True(found.Any(b => b.Rule.ToString() == rule && b.What.Contains(says, StringComparison.Ordinal)), $"{what}, of {rule}; found:\n{string.Join('\n', found)}");
    }
}
