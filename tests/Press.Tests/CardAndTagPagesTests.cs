using Witnessmark.Harness;
using Witnessmark.Press.Tests.Proof;
using Witnessmark.Rendering.Checklist;

namespace Witnessmark.Press.Tests;

/// <summary>Fender cards and leaves of tags, page by page: the demo's, those of a job that needs every kind of tag, and those of procedures that nobody wrote.</summary>
[Collection("press")]
public sealed class CardAndTagPagesTests(Room room)
{
    private const int Generated = 40;

    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public async Task No_card_and_no_tag_of_the_demo_breaks_a_rule(Paper paper)
    {
        var prints = With(Prints.Demo, paper).SelectMany(p => new[] { p.On(paper), p.Issued(paper) }).ToList();
        // card and tags, a specimen and a copy of each, in two languages
        Assert.Equal(8, prints.Count);
        await room.Prove(prints);
    }

    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public async Task Every_kind_of_tag_is_whole_on_its_leaf(Paper paper)
    {
        var prints = new[] { Repo.Path("tests", "Rendering.Tests", "Cases", "strip-down"), Repo.Trial }.SelectMany(w => With(Prints.Of(Repo.Files(w)), paper)).ToList();
        Assert.Contains(prints, p => p is TagPrint);
        await room.Prove([.. prints.Select(p => p.Issued(paper))]);
    }

    [Fact]
    public async Task No_card_of_forty_procedures_breaks_a_rule()
    {
        var sheets = Prints.Of(Tests.Generated.Workshop(Generated)).Where(p => p.Identity.Procedure.StartsWith("GP-", StringComparison.Ordinal));
        await room.Prove([.. sheets.Select((p, i) => Prints.Card(p, Paper.A4).Issued(i % 2 == 0 ? Paper.A4 : Paper.Letter))]);
    }

    [Fact]
    public async Task A_long_id_leaves_tags_and_code_whole()
    {
        var sheet = Prints.Wb40 with { Identity = Prints.Wb40.Identity with { Procedure = "HAULER-WHEEL-BRAKE-0040" } };
        await room.Prove([Prints.Tags(sheet, Paper.Letter).Single().Issued(Paper.Letter), Prints.Card(sheet, Paper.Letter).Issued(Paper.Letter)]);
    }

    private static IEnumerable<PlannedPrint> With(IEnumerable<SheetPrint> sheets, Paper paper) =>
        sheets.SelectMany(s => Prints.Tags(s, paper).Prepend<PlannedPrint>(Prints.Card(s, paper)));
}
