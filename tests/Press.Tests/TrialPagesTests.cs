using System.Collections.Immutable;
using Witnessmark.Compiler;
using Witnessmark.Harness;
using Witnessmark.Language.Text;
using Witnessmark.Press.Tests.Proof;
using Witnessmark.Rendering.Checklist;

namespace Witnessmark.Press.Tests;

/// <summary>The trial sheet: wrong where its key says, and a whole sheet everywhere else.</summary>
[Collection("press")]
public sealed class TrialPagesTests(Room room)
{
    private static readonly ImmutableArray<OutputFile> Kit = Pipeline.TrialKit(Pipeline.Check(Repo.Files(Repo.OneBrake)), new TrialOrder("WB-40")).Files;

    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public async Task A_trial_sheet_breaks_no_rule_of_pages_but_those_of_its_key(Paper paper)
    {
        var sheets = Prints.Demo.Where(s => s.Identity.Procedure == "WB-40").ToList();
        Assert.Equal(["en", "es"], sheets.Select(s => s.Words.Language));
        await room.Prove([.. sheets.Select(s => TrialPrint.Of(s, Kit, paper))]);
    }

    [Fact]
    public async Task It_is_found_that_a_page_does_not_say_that_it_is_on_trial() =>
        Assert.Contains(await Found("@page{@top-center{content:\"sheet\"!important}}"), b => b.Rule == PageRule.Margins && b.What.StartsWith("the head says \"WB-40SHEET", StringComparison.Ordinal));

    [Fact]
    public async Task It_is_found_that_no_page_comes_from_another_copy() =>
        Assert.Contains(await Found(".part{page:auto!important}"), b => b.Rule == PageRule.Margins && b.What.StartsWith("the foot says", StringComparison.Ordinal));

    [Fact]
    public async Task It_is_found_that_the_missing_message_is_there()
    {
        var trial = Trial(Paper.A4) with { MissingMessage = "what nobody wrote" };
        var found = ProvedPages.Broken(await room.Print(trial), trial);

        Assert.Contains(found, b => b.Rule == PageRule.Message && b.What.Contains("the key says that it is not", StringComparison.Ordinal));
        Assert.Contains(found, b => b.Rule == PageRule.Message && b.What.Contains("does not stand above step", StringComparison.Ordinal));
    }

    private static TrialPrint Trial(Paper paper) => TrialPrint.Of(Prints.Wb40, Kit, paper);

    private async Task<IReadOnlyList<Broken>> Found(string style)
    {
        var trial = Trial(Paper.A4);
        return ProvedPages.Broken(await room.Print(trial with { Sheet = trial.Sheet.With(style) }), trial);
    }
}
