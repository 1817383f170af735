using System.Collections.Immutable;
using System.Net;
using System.Text;
using System.Text.RegularExpressions;
using Witnessmark.Compiler;
using Witnessmark.Harness;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Checklist;
using Witnessmark.Rendering.Tests.Checklist;
using Witnessmark.Rendering.Trial;

namespace Witnessmark.Rendering.Tests.Trial;

public sealed partial class TrialKitTests
{
    private const string OtherMark = "X4P";

    private static readonly string[] Kinds =
    [
        "box missing", "changed limit", "facing turned", "message missing", "page of another copy", "steps swapped",
        "wrong count", "wrong device tag", "wrong torque", "wrong unit",
    ];

    public static TheoryData<string> EachKind => [.. Kinds];

    [Fact]
    public void Ten_errors_are_planted_in_the_demo() => Assert.Equal(Kinds, Errors(Demo.Plan()).Select(e => e.Kind).Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(EachKind))]
    public void An_error_is_on_the_sheet_and_nothing_else_differs(string kind)
    {
        var context = Context(Demo.Plan());
        var error = TrialKit.Errors(context, OtherMark).Single(e => e.Kind == kind);
        var clean = TrialKit.Sheet(context, [], Paper.A4);
        var planted = TrialKit.Sheet(context, [error], Paper.A4);
        Assert.NotEqual(clean, planted);
        Assert.NotEqual(error.Was, error.Becomes);
        if (error.StrayMark is not null)
        {
            // in the margins only: the words of the sheet are the same
            Assert.Equal(Body(clean), Body(planted));
            Assert.DoesNotContain(PageRules.Quote(OtherMark), clean, StringComparison.Ordinal);
            Assert.Contains($"@top-right{{content:{PageRules.Quote(OtherMark)}", planted[planted.IndexOf("@page stray{", StringComparison.Ordinal)..], StringComparison.Ordinal);
            return;
        }
        if (error.Edits is [var only])
        {
            // one place, and not more of it than is declared
            var (was, becomes) = Difference(clean, planted);
            Assert.True(was.Length <= only.From.Length && becomes.Length <= only.To.Length, $"{was} → {becomes}");
            Assert.Equal(clean.Length - only.From.Length + only.To.Length, planted.Length);
            Assert.Contains(error.Becomes, only.Step.Length == 0 ? "" : Text(Article(planted, only.Step)), StringComparison.Ordinal);
            return;
        }
        // two steps that changed places: changed back, the true sheet
        Assert.Equal(clean, error.Edits.Aggregate(planted, (html, e) => new TrialEdit(e.Step, e.To, e.From).In(html)));
    }

    [Fact]
    public void All_ten_together_differ_by_the_sum_of_their_edits_and_no_two_stand_in_each_other()
    {
        var context = Context(Demo.Plan());
        var errors = TrialKit.Errors(context, OtherMark);
        var planted = Body(TrialKit.Sheet(context, errors, Paper.A4));
        var expected = Body(TrialKit.Sheet(context, [], Paper.A4)).Length + errors.SelectMany(e => e.Edits).Sum(e => e.To.Length - e.From.Length);
        Assert.Equal(expected, planted.Length);
        Assert.All(errors.Where(e => e.Edits is [{ To.Length: > 0 }]), e => Assert.Contains(e.Becomes, Text(Article(planted, e.Edits[0].Step)), StringComparison.Ordinal));
    }

    [Fact]
    public void The_errors_follow_the_procedure()
    {
        var library = Demo.Read(("wheel-end/wb-40.md", "- count: friction-disc = 9, steel-plate", "- count: friction-disc = 7, steel-plate"), ("machines/okr-34.yaml", "good: 4.92 to 5.08 mm", "good: 4.92 to 5.12 mm"));
        var errors = Errors(Demo.Plan(library));
        Assert.Equal(("of 7", "of 6"), errors.Where(e => e.Kind == "wrong count").Select(e => (e.Was, e.Becomes)).Single());
        Assert.Equal(("4.92 to 5.12 mm", "4.92 to 5.21 mm"), errors.Where(e => e.Kind == "changed limit").Select(e => (e.Was, e.Becomes)).Single());
    }

    [Fact]
    public void An_edit_that_finds_nothing_fails() =>
        Assert.Throws<InvalidOperationException>(() => new TrialEdit("step-1", "no such text", "").In(Demo.Sheet()));

    [Theory]
    [InlineData("5.08", "5.80")]
    [InlineData("140 N·m", "104 N·m")]
    [InlineData("235", "253")]
    [InlineData("77", "770")]
    [InlineData("9", "90")]
    public void Digits_change_places_as_a_tired_hand_writes_them(string was, string becomes) => Assert.Equal(becomes, TrialSheet.Swap(was));

    [Fact]
    public void The_kit_is_made_only_when_asked_for_and_keeps_its_key_apart()
    {
        var bench = Pipeline.Check(Repo.Files(Repo.Path("procedures")));
        Assert.DoesNotContain(Pipeline.Build(bench, "0.0.0"), f => f.Path.StartsWith("trial-kit/", StringComparison.Ordinal));
        var kit = Pipeline.TrialKit(bench, "WB-40").Files.ToDictionary(f => f.Path, f => Encoding.UTF8.GetString(f.Bytes.Span));
        Assert.Equal(["trial-kit/form.html", "trial-kit/index.html", "trial-kit/key.html", "trial-kit/sheet-a4.html", "trial-kit/sheet-letter.html"], kit.Keys.Order(StringComparer.Ordinal));
        Assert.All(kit.Values, html => Assert.True(html.Contains("TRIAL: NOT FOR WORK", StringComparison.Ordinal) || html.Contains(PageRules.Quote("TRIAL: NOT FOR WORK"), StringComparison.Ordinal)));
        Assert.Equal(10, Markup.Count(kit["trial-kit/key.html"], "<th scope=\"row\">"));
        Assert.All(Kinds, k => Assert.DoesNotContain(k, kit["trial-kit/form.html"] + kit["trial-kit/index.html"] + kit["trial-kit/sheet-a4.html"], StringComparison.Ordinal));
        Assert.NotNull(Pipeline.TrialKit(bench, "WB-60").Refusal);
        Assert.NotNull(Pipeline.TrialKit(bench, "WB-99").Refusal);
    }

    private static SheetContext Context(SheetPlan plan) => new(plan, Demo.Issued, Words.English);

    private static ImmutableArray<PlantedError> Errors(SheetPlan plan) => TrialKit.Errors(Context(plan), OtherMark);

    private static string Body(string html) => html[html.IndexOf("<main>", StringComparison.Ordinal)..];

    private static string Article(string html, string id) => Markup.Between(html, $"id=\"{id}\"", "</article>");

    private static string Text(string html) => WebUtility.HtmlDecode(Blank().Replace(Tag().Replace(html, " "), " "));

    /// <summary>What lies between the common beginning and the common end.</summary>
    private static (string Was, string Becomes) Difference(string one, string other)
    {
        var start = one.Zip(other).TakeWhile(p => p.First == p.Second).Count();
        var end = one[start..].Reverse().Zip(other[start..].Reverse()).TakeWhile(p => p.First == p.Second).Count();
        return (one[start..^end], other[start..^end]);
    }

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tag();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blank();
}
