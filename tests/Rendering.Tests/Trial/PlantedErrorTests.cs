using System.Net;
using System.Text.RegularExpressions;
using Witnessmark.Compiler;
using Witnessmark.Harness;
using Witnessmark.Language.Model;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Checklist;
using Witnessmark.Rendering.Tests.Checklist;
using Witnessmark.Rendering.Trial;

namespace Witnessmark.Rendering.Tests.Trial;

public sealed partial class PlantedErrorTests
{
    /// <summary>Every kind of error in both languages.</summary>
    public static TheoryData<ErrorKind, string> EachKind
    {
        get
        {
            var each = new TheoryData<ErrorKind, string>();
            foreach (var kind in Enum.GetValues<ErrorKind>())
                foreach (var language in SheetLanguages.All)
                    each.Add(kind, language);
            return each;
        }
    }

    public static TheoryData<string> Languages => [.. SheetLanguages.All];

    [Theory]
    [MemberData(nameof(Languages))]
    public void Ten_errors_are_planted_in_the_demo(string language) =>
        Assert.Equal(Enum.GetValues<ErrorKind>(), TrialKit.Errors(Context(language)).Select(e => e.Kind).Order());

    [Theory]
    [MemberData(nameof(Languages))]
    public void They_stand_at_the_same_steps_in_every_language(string language) =>
        Assert.Equal(
            TrialKit.Errors(Context(SheetLanguages.English)).Where(e => e.StrayMark is null).Select(e => (e.Kind, e.Where)),
            TrialKit.Errors(Context(language)).Where(e => e.StrayMark is null).Select(e => (e.Kind, e.Where)));

    [Theory]
    [MemberData(nameof(EachKind))]
    public void An_error_is_on_the_sheet_and_nothing_else_differs(ErrorKind kind, string language)
    {
        var context = Context(language);
        var error = TrialKit.Errors(context).Single(e => e.Kind == kind);
        var clean = TrialKit.Sheet(context, [], Paper.A4);
        var planted = TrialKit.Sheet(context, [error], Paper.A4);
        Assert.NotEqual(clean, planted);
        Assert.NotEqual(error.Was, error.Becomes);
        if (error.StrayMark is { } stray)
        {
            // in the margins only: the words of the sheet are the same
            Assert.Equal(Body(clean), Body(planted));
            Assert.DoesNotContain(PageRules.Quote(stray), clean, StringComparison.Ordinal);
            Assert.Contains($"@top-right{{content:{PageRules.Quote(stray)}", planted[planted.IndexOf("@page stray{", StringComparison.Ordinal)..], StringComparison.Ordinal);
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

    [Theory]
    [MemberData(nameof(Languages))]
    public void All_ten_together_differ_by_the_sum_of_their_edits_and_no_two_stand_in_each_other(string language) => DifferByTheirEdits(Context(language));

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Every_sheet_of_a_workshop_takes_the_errors_that_it_has_a_place_for(string id, string? part)
    {
        var procedure = Workshop.Procedure(id)!;
        DifferByTheirEdits(new SheetContext(SheetPlanner.Plan(Workshop.ScopeOf(procedure), part), Demo.Issued, Words.English));
    }

    [Fact]
    public void The_errors_follow_the_procedure()
    {
        var library = Demo.Read(("wheel-end/wb-40.md", "- count: friction-disc = 9, steel-plate", "- count: friction-disc = 7, steel-plate"), ("machines/okr-34.yaml", "good: 4.92 to 5.08 mm", "good: 4.92 to 5.12 mm"));
        var errors = TrialKit.Errors(new SheetContext(Demo.Plan(library), Demo.Issued, Words.English));
        Assert.Equal(("of 7", "of 6"), errors.Where(e => e.Kind == ErrorKind.WrongCount).Select(e => (e.Was, e.Becomes)).Single());
        Assert.Equal(("4.92 to 5.12 mm", "4.92 to 5.21 mm"), errors.Where(e => e.Kind == ErrorKind.ChangedLimit).Select(e => (e.Was, e.Becomes)).Single());
    }

    [Fact]
    public void An_edit_stays_in_its_step()
    {
        var edit = new TrialEdit("step-1", "ladder", "");
        Assert.Contains(edit.From, Demo.Sheet(), StringComparison.Ordinal);
        Assert.False(edit.IsIn(Demo.Sheet()));
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
    public void The_kinds_have_words_in_both_languages() =>
        Assert.All(Enum.GetValues<ErrorKind>(), k => Assert.NotEqual(Words.English.Planted(k), Words.Spanish.Planted(k)));

    public static TheoryData<string, string?> Sheets
    {
        get
        {
            var sheets = new TheoryData<string, string?>();
            foreach (var procedure in Workshop.Procedures.Where(p => !p.IsCommonPart))
                foreach (var part in procedure.Parts.Where(p => p.Steps.Any()))
                    sheets.Add(procedure.Id.Value, part.Name?.Value);
            return sheets;
        }
    }

    private static Bench Bench { get; } = Pipeline.Check(Repo.Files(Repo.OneBrake));

    /// <summary>Nine procedures in parts and a job.</summary>
    private static Library Workshop { get; } = Pipeline.Check(Repo.Files(Repo.Trial)).Library;

    /// <summary>The demo's sheet as it is tried in one of its languages.</summary>
    private static SheetContext Context(string language)
    {
        var library = language == SheetLanguages.English ? Bench.Library : SheetTranslations.Of(Bench.Library.ScopeOf(Bench.Library.Procedure("WB-40")!), language).Library;
        return new SheetContext(Demo.Plan(library), Demo.Issued, Words.Of(language));
    }

    private static void DifferByTheirEdits(SheetContext context)
    {
        var errors = TrialKit.Errors(context);
        Assert.NotEmpty(errors);
        var planted = Body(TrialKit.Sheet(context, errors, Paper.A4));
        var expected = Body(TrialKit.Sheet(context, [], Paper.A4)).Length + errors.SelectMany(e => e.Edits).Sum(e => e.To.Length - e.From.Length);
        Assert.Equal(expected, planted.Length);
        Assert.All(errors.Where(e => e.Edits is [{ To.Length: > 0 }]), e => Assert.Contains(e.Becomes, Text(Article(planted, e.Edits[0].Step)), StringComparison.Ordinal));
    }

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
