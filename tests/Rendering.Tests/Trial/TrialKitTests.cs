using System.Text;
using System.Text.RegularExpressions;
using Witnessmark.Compiler;
using Witnessmark.Harness;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Records.Hashing;
using Witnessmark.Records.Receiving;
using Witnessmark.Rendering.Checklist;
using Witnessmark.Rendering.Tests.Checklist;
using Witnessmark.Rendering.Trial;

namespace Witnessmark.Rendering.Tests.Trial;

public sealed partial class TrialKitTests
{
    [Fact]
    public void The_kit_is_made_only_when_asked_for_and_keeps_its_key_apart()
    {
        Assert.DoesNotContain(Pipeline.Build(Bench, "0.0.0"), f => f.Path.StartsWith("trial-kit/", StringComparison.Ordinal));
        Assert.Empty(Pipeline.TrialKit(Bench, new TrialOrder(null)).Files);
        var kit = Kit(Bench, new TrialOrder("WB-40"));
        Assert.Equal(
            ["form", "form-es", "index", "index-es", "key", "key-es", "sheet-a4", "sheet-es-a4", "sheet-es-letter", "sheet-letter"],
            kit.Keys.Select(k => k["trial-kit/".Length..^".html".Length]).Order(StringComparer.Ordinal));
        foreach (var (name, html) in kit)
        {
            var words = Words.Of(name.Contains("-es", StringComparison.Ordinal) ? SheetLanguages.Spanish : SheetLanguages.English);
            Assert.Contains($"<html lang=\"{words.Language}\">", html, StringComparison.Ordinal);
            Assert.True(html.Contains(words.Trial, StringComparison.Ordinal) || html.Contains(PageRules.Quote(words.Trial), StringComparison.Ordinal), name);
            // what was planted is on the key alone
            var key = name.Contains("/key", StringComparison.Ordinal);
            Assert.All(Enum.GetValues<ErrorKind>(), k => Assert.Equal(key, html.Contains(words.Planted(k), StringComparison.Ordinal)));
            if (key)
                Assert.Equal(10, Markup.Count(html, "<th scope=\"row\">"));
        }
    }

    [Theory]
    [InlineData("sheet-a4")]
    [InlineData("sheet-es-letter")]
    public void What_is_typed_from_a_trial_sheet_is_refused(string sheet)
    {
        var marks = TopMark().Matches(Kit(Bench, new TrialOrder("WB-40"))[$"trial-kit/{sheet}.html"]).Select(m => m.Groups[1].Value).ToList();
        // of the sheet, and of its pages from another copy
        Assert.Equal(2, marks.Distinct().Count());
        var hash = ProcedureHash.Of(Bench.Library, Bench.Library.Procedure("WB-40")!).Short12;
        var record = Repo.Read("tests", "Records.Tests", "Cases", "complete-natural-scatter.yaml").Replace("{hash}", hash, StringComparison.Ordinal);
        foreach (var mark in marks)
        {
            var result = Pipeline.Receive(Bench, RawFile.Of("typed.yaml", Encoding.UTF8.GetBytes(record.Replace("{copy}", mark, StringComparison.Ordinal))));
            Assert.Equal(ReceptionState.Refused, result.State);
            Assert.StartsWith($"Set mark {mark} is that of a trial sheet", Assert.Single(result.Findings).Found, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_procedure_in_parts_is_tried_in_all_of_them_or_in_one()
    {
        var bench = Pipeline.Check(Repo.Files(Repo.Trial));
        string[] strip = ["form--strip", "key--strip", "sheet--strip-a4", "sheet--strip-letter"], assemble = ["form--assemble", "key--assemble", "sheet--assemble-a4", "sheet--assemble-letter"];
        Assert.Equal(strip.Append("index").Order(StringComparer.Ordinal), Names(new TrialOrder("WB-40", "strip")));
        Assert.Equal(strip.Concat(assemble).Append("index").Order(StringComparer.Ordinal), Names(new TrialOrder("WB-40")));
        Assert.Equal("WB-40 has no part refill.", Pipeline.TrialKit(bench, new TrialOrder("WB-40", "refill")).Refusal!.What);

        IEnumerable<string> Names(TrialOrder order) => Kit(bench, order).Keys.Select(k => k["trial-kit/".Length..^".html".Length]).Order(StringComparer.Ordinal);
    }

    [Fact]
    public void Every_way_on_an_index_leads_to_a_file_of_the_kit()
    {
        var kit = Kit(Bench, new TrialOrder("WB-40"));
        foreach (var (name, html) in kit.Where(k => k.Key.Contains("/index", StringComparison.Ordinal)))
        {
            var ways = Reference().Matches(html).Select(m => "trial-kit/" + m.Groups[1].Value).ToList();
            Assert.Equal(5, ways.Count);
            Assert.All(ways, w => Assert.Contains(w, kit.Keys));
            Assert.DoesNotContain(name, ways);
        }
    }

    private static Bench Bench { get; } = Pipeline.Check(Repo.Files(Repo.OneBrake));

    private static Dictionary<string, string> Kit(Bench bench, TrialOrder order) =>
        Pipeline.TrialKit(bench, order).Files.ToDictionary(f => f.Path, f => Encoding.UTF8.GetString(f.Bytes.Span));

    [GeneratedRegex("@top-right\\{content:\"(\\w{3})\"")]
    private static partial Regex TopMark();

    [GeneratedRegex("href=\"([^\"]*)\"")]
    private static partial Regex Reference();
}
