using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using Witnessmark.Harness;
using Witnessmark.Language.Model;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Checklist;

namespace Witnessmark.Rendering.Tests.Checklist;

public class SheetPageTests
{
    [Fact]
    public void The_demo_sheet_reads_as_approved() =>
        Approved.Check("Rendering.Tests/Checklist/wb-40.approved.html", Markup.Body(Demo.Sheet()));

    [Fact]
    public void The_same_input_gives_the_same_bytes() => Assert.Equal(Demo.Sheet(), Demo.Sheet());

    [Fact]
    public void Every_step_stands_there_once_with_its_check_digit()
    {
        var html = Demo.Sheet();
        var codes = Demo.Plan().Steps.Select(s => s.Code).ToList();
        Assert.Equal(16 + 8, codes.Count);
        Assert.All(codes, c => Assert.Equal(1, Markup.Count(html, $">{c.Plain}<small>/{c.CheckDigit}</small></h3>")));
        Assert.Equal(codes.Count, Markup.Count(html, "<h3 class=\"code\""));
    }

    [Fact]
    public void Every_reading_that_the_plan_asks_for_has_its_box()
    {
        var grids = Demo.Plan().Steps.SelectMany(s => s.Asks.OfType<ReadingAsk>()).ToList();
        var asked = grids.Sum(g => g.Pieces.Length * g.Points);
        // 3 in the cavity, 9 discs, 8 plates and 2 end plates at three points each
        Assert.Equal(3 + 27 + 24 + 6, asked);
        var printed = Regex.Matches(Demo.Sheet(), "<p class=\"fields reading-row\">.*?</p>|<table class=\"readings\">.*?</table>", RegexOptions.Singleline);
        Assert.Equal(asked, printed.Sum(m => Markup.Count(m.Value, "class=\"box reading")));
    }

    [Fact]
    public void Limits_stand_in_both_units()
    {
        var html = Demo.Sheet();
        Assert.Contains("<span class=\"native\">4.92 to 5.08 mm</span> <span class=\"beside\">0.1938 to 0.2000 in</span>", html, StringComparison.Ordinal);
        Assert.Contains("<span class=\"native\">235 ± 12 N·m</span> <span class=\"beside\">173 ± 8 lbf·ft</span>", html, StringComparison.Ordinal);
    }

    [Fact]
    public void A_decision_prints_the_limits_that_its_verdicts_stand_for()
    {
        const string leastPlate = "    - stop-if: plate-thickness = replace\n";
        var plan = Demo.Plan(Demo.Read(("wheel-end/wb-40.md", leastPlate, "    - decide: plates\n    - outcome: scrap when plate-thickness = replace\n    - outcome: good otherwise\n")));
        var html = SheetPage.Render(plan, Demo.Issued, Paper.A4, Words.English);
        Assert.Contains("plate thickness replace (below 3.10 mm)", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Work_that_goes_back_says_the_number_of_the_step()
    {
        const string leastPlate = "    - stop-if: plate-thickness = replace\n";
        var plan = Demo.Plan(Demo.Read(("wheel-end/wb-40.md", leastPlate, $"{leastPlate}    - again-from: measure-each-friction-disc, at most 2 times, then end no-good-parts (escalate)\n")));
        var html = SheetPage.Render(plan, Demo.Issued, Paper.A4, Words.English);
        Assert.Contains("step 2, measure each friction disc, at most 2 times", html, StringComparison.Ordinal);
    }

    [Fact]
    public void A_point_that_has_a_word_for_its_name_is_to_be_translated_and_an_hour_is_not()
    {
        var library = Demo.Read(("machines/okr-34.yaml", "at: [12, 4, 8] ", "at: [12, left, 8] "));
        var words = SheetWords.Of(library.ScopeOf(library.Procedure("WB-40")!));
        Assert.Contains(words, w => w.Written == "left");
        Assert.DoesNotContain(words, w => w.Written == "12");
    }

    [Fact]
    public void A_notice_has_no_triangle()
    {
        var html = Demo.Sheet();
        var notice = Markup.Between(html, "class=\"message notice\"", "</div>");
        Assert.DoesNotContain("<svg", notice, StringComparison.Ordinal);
        Assert.Contains("<svg", Markup.Between(html, "class=\"message warning\"", "</div>"), StringComparison.Ordinal);
    }

    [Fact]
    public void The_devices_still_in_the_machine_head_each_section()
    {
        var strips = Regex.Matches(Demo.Sheet(), "<p class=\"still\">(.*?)</p>").Select(m => m.Groups[1].Value).ToList();
        Assert.Equal(4, strips.Count);
        Assert.Contains("bore cover <b>BC1</b>", strips[0], StringComparison.Ordinal);
        Assert.DoesNotContain("BC1", strips[2], StringComparison.Ordinal);
        Assert.Contains("guide studs <b>G1 G2</b>", strips[2], StringComparison.Ordinal);
        Assert.DoesNotContain("G1", strips[3], StringComparison.Ordinal);
    }

    [Fact]
    public void The_last_line_says_what_the_signature_says() =>
        Assert.Contains("16 signed: brake stack verified, backing ring fitted, backing ring bolts torqued, guide studs G1 G2 stored. Go on.", Demo.Sheet(), StringComparison.Ordinal);

    [Fact]
    public void What_must_be_so_is_taken_apart_to_single_cells()
    {
        var cells = Markup.Between(Demo.Sheet(), "<ul class=\"cells\">", "</ul>");
        Assert.Equal(10, Markup.Count(cells, "<li class=\"cell\">"));
        Assert.Contains("<li class=\"cell\">engine stopped</li>", cells, StringComparison.Ordinal);
        Assert.Contains("<li class=\"cell\">wheel chocks K1 K2 K3 K4 placed</li>", cells, StringComparison.Ordinal);
        Assert.DoesNotContain("made safe", cells, StringComparison.Ordinal);
    }

    [Fact]
    public void A_condition_that_only_the_machine_can_answer_is_printed_with_a_cell_for_no()
    {
        var library = Demo.Read(("wheel-end/wb-40.md", "    - by: helper\n    - recover: BC1", "    - by: helper\n    - only-if: bore-cover = placed\n    - recover: BC1"));
        var html = SheetPage.Render(Demo.Plan(library), Demo.Issued, Paper.A4, Words.English);
        Assert.Contains("<b>Only if:</b> bore cover BC1 placed", html, StringComparison.Ordinal);
        Assert.Contains("<span class=\"cell\">NOT SO</span>", html, StringComparison.Ordinal);
        Assert.DoesNotContain("NOT SO", Demo.Sheet(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_decision_has_a_cell_and_its_rule_for_each_outcome()
    {
        const string Count = "    - count: friction-disc = 9, steel-plate = 8, end-plate = 2";
        var library = Demo.Read(("wheel-end/wb-40.md", Count, Count + "\n    - decide: pile\n    - outcome: complete when disc-thickness = good\n    - outcome: sent-back otherwise"));
        var html = SheetPage.Render(Demo.Plan(library), Demo.Issued, Paper.A4, Words.English);
        Assert.Contains("<span class=\"cell\">complete</span> <span class=\"cell\">sent back</span>", html, StringComparison.Ordinal);
        Assert.Contains("<b>complete:</b> disc thickness good", html, StringComparison.Ordinal);
        Assert.Contains("<b>sent back:</b> otherwise", html, StringComparison.Ordinal);
    }

    [Fact]
    public void The_fixed_words_are_in_the_language_asked_for_and_the_authors_words_stay()
    {
        var html = SheetPage.Render(Demo.Plan(), Demo.Issued, Paper.A4, Words.Spanish);
        Assert.StartsWith("<!doctype html>\n<html lang=\"es\">", html, StringComparison.Ordinal);
        Assert.All(["ADVERTENCIA", "SIGUE PUESTO", "SEGUNDA PERSONA", "Fuera de límite", "Measure the cavity"], w => Assert.Contains(w, html, StringComparison.Ordinal));
        Assert.All(["WARNING", "STILL IN", "SECOND PERSON", "Outside", "DONE"], w => Assert.DoesNotContain(w, html, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(Paper.A4, "@page{size:A4;")]
    [InlineData(Paper.Letter, "@page{size:letter;")]
    public void The_paper_is_the_one_asked_for(Paper paper, string rule)
    {
        var html = SheetPage.Render(Demo.Plan(), Demo.Issued, paper, Words.English);
        Assert.Equal(1, Markup.Count(html, "@page{size:"));
        Assert.Contains(rule, html, StringComparison.Ordinal);
    }

    [Fact]
    public void A_print_that_was_not_issued_says_so_on_every_page()
    {
        var html = SheetPage.Render(Demo.Plan(), Demo.Specimen, Paper.A4, Words.English);
        Assert.Contains("@top-right{content:\"SPECIMEN\"", html, StringComparison.Ordinal);
        Assert.Contains("WB-40 2.1.0 · 3F9A C21B 77DE · SPECIMEN, not issued", html, StringComparison.Ordinal);
        Assert.DoesNotContain("K7M", html, StringComparison.Ordinal);
        Assert.Contains("<span class=\"before\">serial</span>", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Only_its_own_style_may_run_and_nothing_is_fetched()
    {
        var html = Demo.Sheet();
        var style = Markup.Between(html, "<style>", "</style>");
        var hash = Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(style)));
        Assert.Contains($"default-src &#39;none&#39;; style-src &#39;sha256-{hash}&#39;; img-src data:;", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", html, StringComparison.Ordinal);
        Assert.DoesNotMatch("(src|href|style)\\s*=", html);
        Assert.DoesNotMatch("url\\((?!\"data:|#)", html);
        Assert.DoesNotMatch("https?://(?!www\\.w3\\.org/2000/svg)", html);
    }

    [Fact]
    public void The_program_names_its_own_templates_by_a_hash() =>
        Assert.Matches("^[0-9a-f]{64}$", SheetIdentity.OwnTemplateHash);

    [Fact]
    public void Headings_go_down_one_step_at_a_time()
    {
        var levels = Regex.Matches(Demo.Sheet(), "<h([1-6])[ >]").Select(m => int.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture)).ToList();
        Assert.Equal(1, levels[0]);
        Assert.All(levels.Zip(levels.Skip(1)), p => Assert.True(p.Second <= p.First + 1));
    }

    [Fact]
    public void No_id_is_used_twice()
    {
        var ids = Regex.Matches(Demo.Sheet(), " id=\"([^\"]+)\"").Select(m => m.Groups[1].Value).ToList();
        Assert.NotEmpty(ids);
        Assert.Equal(ids.Distinct().Count(), ids.Count);
    }
}
