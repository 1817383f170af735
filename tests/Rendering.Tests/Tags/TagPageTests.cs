using System.Text;
using System.Text.RegularExpressions;
using Witnessmark.Compiler;
using Witnessmark.Harness;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Reading;
using Witnessmark.Records.Sheets;
using Witnessmark.Records.Tags;
using Witnessmark.Rendering.Checklist;
using Witnessmark.Rendering.Html;
using Witnessmark.Rendering.Tags;
using Witnessmark.Rendering.Tests.Checklist;

namespace Witnessmark.Rendering.Tests.Tags;

public sealed partial class TagPageTests
{
    /// <summary>A workshop whose one job needs every kind of tag once.</summary>
    private static readonly Library StripDown = WorkshopReader.Read(Repo.Files(Repo.Path("tests", "Rendering.Tests", "Cases", "strip-down")), new FindingList());

    [Fact]
    public void The_tags_of_the_demo_read_as_approved() =>
        Approved.Check("Rendering.Tests/Tags/wb-40.approved.html", Markup.Body(Page(Demo.Plan(), Words.English)));

    [Fact]
    public void Every_kind_of_tag_reads_as_approved() =>
        Approved.Check("Rendering.Tests/Tags/wb-91.approved.html", Markup.Body(Page(Strip("WB-91"), Words.English)));

    [Fact]
    public void Every_device_has_its_tag_its_stub_and_its_place_once()
    {
        var html = Page(Demo.Plan(), Words.English);
        foreach (var tag in new[] { "L1", "L2", "K1", "K2", "K3", "K4", "B1", "B2", "G1", "G2", "BC1" })
        {
            Assert.Equal(1, Markup.Count(html, $"<h2><span class=\"tag\">{tag}</span>"));
            Assert.Equal(1, Markup.Count(html, $"<b class=\"tag\">{tag}</b> <span class=\"what\">"));
            Assert.Equal(1, Markup.Count(html, $"<li><b class=\"tag\">{tag}</b> <span><b class=\"still\">STILL IN</b>"));
        }
    }

    [Fact]
    public void A_tag_says_when_its_device_goes_in_and_comes_out()
    {
        Assert.Equal(
            ["L1 from the start to the end", "L2 from the start to the end", "B1 from the start to the end", "B2 from the start to the end", "G1 from the start to 15", "G2 from the start to 15", "BC1 from the start to 8"],
            Stays(Demo.Plan()).Where(s => s[0] != 'K'));
        Assert.Equal(["L1 from the start to the end", "C1 from 1 to 10", "C2 from 1 to 10", "BC1 from 6 to the end"], Stays(Strip("WB-91")));
    }

    [Fact]
    public void One_at_each_place_uses_up_all_tags_of_the_kind()
    {
        var trial = WorkshopReader.Read(Repo.Files(Repo.Trial), new FindingList());
        var isolation = trial.Procedure("WB-10")!;
        var stays = isolation.Parts.SelectMany(p => Stays(SheetPlanner.Plan(trial.ScopeOf(isolation), p.Name?.Value))).ToList();
        Assert.All(Enumerable.Range(1, 6), n => Assert.Contains(stays, s => s.StartsWith($"C{n} from ", StringComparison.Ordinal) && !s.EndsWith("the end", StringComparison.Ordinal)));
    }

    [Fact]
    public void The_key_names_what_keeps_it_off()
    {
        var key = Markup.Between(Page(Demo.Plan(), Words.English), "<div class=\"body key\">", "</article>");
        Assert.Contains("<span>DO NOT START</span> <span>DO NOT MOVE</span>", key, StringComparison.Ordinal);
        Assert.Contains("In the machine: L1 L2 B1 B2 K1 K2 K3 K4", key, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_is_printed_that_the_work_does_not_need()
    {
        Assert.True(TagPlanner.Plan(Strip("WB-92")).IsEmpty);
        Assert.Throws<ArgumentException>(() => Page(Strip("WB-92"), Words.English));
        var html = Page(Demo.Plan(), Words.English);
        Assert.DoesNotContain("USED OIL", html, StringComparison.Ordinal);
        Assert.DoesNotContain("BOLTS", html, StringComparison.Ordinal);
        Assert.DoesNotContain("STILL OWED", html, StringComparison.Ordinal);
        // new discs that fail are sent back: only the plates are sorted
        Assert.Equal(2, Markup.Count(html, "class=\"body pile"));
    }

    [Fact]
    public void A_build_has_tags_on_both_papers_only_where_there_are_any()
    {
        var built = Pipeline.Build(Pipeline.Check(Repo.Files(Repo.Path("tests", "Rendering.Tests", "Cases", "strip-down"))), "0.0.0");
        Assert.Equal(["sheets/wb-91--tags-a4.html", "sheets/wb-91--tags-letter.html"], built.Select(f => f.Path).Where(p => p.Contains("tags", StringComparison.Ordinal)));
        var page = Encoding.UTF8.GetString(built.Single(f => f.Path == "procedures/wb-91.html").Bytes.Span);
        Assert.Contains("sheets/wb-91--tags-a4.html", page, StringComparison.Ordinal);
        Assert.Contains("sheets/wb-91--tags-letter.html", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_tag_says_which_print_it_belongs_to_and_what_stands_above_it()
    {
        var cuts = Cut().Matches(Page(Strip("WB-91"), Words.English)).Select(m => m.Value).ToList();
        Assert.Equal(16, cuts.Count);
        Assert.All(cuts, c => Assert.Contains("3F9A C21B 77DE · copy K7M", c, StringComparison.Ordinal));
        Assert.All(cuts, c => Assert.Contains("licensed practice", c, StringComparison.Ordinal));
        Assert.Contains("3F9A C21B 77DE · SPECIMEN", TagPage.Render(TagPlanner.Plan(Demo.Plan()), Demo.Plan(), Demo.Specimen, Paper.A4, Words.English), StringComparison.Ordinal);
    }

    [Fact]
    public void The_fixed_words_are_in_the_language_asked_for()
    {
        var html = Page(Strip("WB-91"), Words.Spanish);
        Assert.All(["NO ARRANCAR", "SIGUE PUESTO", "ACEITE USADO", "DESECHO", "PENDIENTE", "PERNOS", "cover bolts"], w => Assert.Contains(w, html, StringComparison.Ordinal));
        Assert.All(["STILL IN", "USED OIL", "SCRAP", "DO NOT"], w => Assert.DoesNotContain(w, html, StringComparison.Ordinal));
    }

    [Fact]
    public void No_text_is_smaller_than_11_points_and_no_rule_thinner_than_half_a_millimetre()
    {
        var css = Resources.Text("site/tags.css");
        var sizes = Points().Matches(css).Select(m => double.Parse(m.Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture)).ToList();
        Assert.True(sizes.Count > 15);
        Assert.All(sizes, s => Assert.True(s >= 11, $"{s} pt"));
        Assert.Contains("--frame:.53mm", css, StringComparison.Ordinal);
        Assert.Contains("--dots:.8mm", css, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, 0, 0)]
    [InlineData(3, 0, 1)]
    [InlineData(0, 6, 1)]
    [InlineData(1, 5, 2)]
    [InlineData(4, 13, 4)]
    public void A_leaf_holds_three_wide_tags_or_six_narrow_ones(int wide, int narrow, int leaves)
    {
        var cuts = Enumerable.Repeat(new Cut([], Wide: true), wide).Concat(Enumerable.Repeat(new Cut([], Wide: false), narrow)).ToList();
        var laid = Leaves.Lay(cuts);
        Assert.Equal(leaves, laid.Length);
        Assert.Equal(wide + narrow, laid.Sum(l => l.Length));
        Assert.All(laid, l => Assert.True(l.Count(c => c.Wide) + Math.Ceiling(l.Count(c => !c.Wide) / 2.0) <= Leaves.RowsOfLeaf));
    }

    private static SheetPlan Strip(string id) => SheetPlanner.Plan(StripDown.ScopeOf(StripDown.Procedure(id)!), null);

    private static IEnumerable<string> Stays(SheetPlan plan) =>
        TagPlanner.Plan(plan).Devices.Select(d => $"{d.Tag} from {d.In?.Plain ?? "the start"} to {d.Out?.Plain ?? "the end"}");

    private static string Page(SheetPlan plan, Words words) =>
        TagPage.Render(TagPlanner.Plan(plan), plan, Demo.Issued with { Procedure = plan.Procedure.Id.Value }, Paper.A4, words);

    [GeneratedRegex("<article class=\"cut.*?</article>", RegexOptions.Singleline)]
    private static partial Regex Cut();

    [GeneratedRegex(@"(?:font|font-size|--[a-z]+):[^;{}]*?([\d.]+)pt")]
    private static partial Regex Points();
}
