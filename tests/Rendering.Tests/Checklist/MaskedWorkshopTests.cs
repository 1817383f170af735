using System.Net;
using System.Reflection;
using System.Text.RegularExpressions;
using Witnessmark.Harness;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;
using Witnessmark.Reading;
using Witnessmark.Records.Sheets;
using Witnessmark.Records.Tags;
using Witnessmark.Rendering.Checklist;
using Witnessmark.Rendering.Fender;
using Witnessmark.Rendering.Tags;

namespace Witnessmark.Rendering.Tests.Checklist;

/// <summary>
/// The large trial workshop with every word masked that a translation is asked for. Whatever English is left on its Spanish
/// sheets, tags and cards would be printed without anybody having been asked to translate it.
/// </summary>
public sealed partial class MaskedWorkshopTests
{
    private const string Mask = "ŵŵŵ";

    private static readonly Library Trial = Masked(WorkshopReader.Read(Repo.Files(Repo.Trial), new FindingList()));

    private static readonly HashSet<string> Ours = [.. Spanish().SelectMany(Words), .. UnitTable.All.SelectMany(u => Words(u.Symbol)), "chromium"];

    public static TheoryData<string, string?> Parts
    {
        get
        {
            var parts = new TheoryData<string, string?>();
            foreach (var procedure in Trial.Procedures.Where(p => !p.IsCommonPart))
                foreach (var part in procedure.Parts)
                    parts.Add(procedure.Id.Value, part.Name?.Value);
            return parts;
        }
    }

    [Theory]
    [MemberData(nameof(Parts))]
    public void No_English_word_is_printed_that_nobody_was_asked_to_translate(string id, string? part)
    {
        var library = SheetTranslations.Of(Trial.ScopeOf(Trial.Procedure(id)!), "es").Library;
        var plan = SheetPlanner.Plan(library.ScopeOf(library.Procedure(id)!), part);
        var identity = Demo.Specimen with { Procedure = id };
        var tags = TagPlanner.Plan(plan);
        string[] pages =
        [
            SheetPage.Render(plan, identity, Paper.A4, Rendering.Words.Spanish),
            FenderCard.Render(plan, identity, Paper.A4, Rendering.Words.Spanish),
            .. tags.IsEmpty ? [] : new[] { TagPage.Render(tags, plan, identity, Paper.A4, Rendering.Words.Spanish) },
        ];
        Assert.Contains(pages, p => p.Contains(Mask, StringComparison.Ordinal));
        // the id is the procedure's name in every language
        Assert.Equal([], pages.SelectMany(Visible).SelectMany(Words).Where(w => !Ours.Contains(w)).Except(Words(id)).Distinct().Order());
    }

    private static Library Masked(Library library)
    {
        var source = new SourceText("mask.es.yaml", Mask);
        var at = source.At(0, Mask.Length);
        var words = library.Procedures.SelectMany(p => SheetWords.Of(library.ScopeOf(p))).ToList();
        Assert.True(words.Count > 300);
        var data = new Translation(source, new(Translation.WorkshopName, at), new("es", at), library.Workshop.Node)
        {
            Names = [.. words.Where(w => !w.IsText).Select(w => new WordPair(new(w.Key, at), new(Mask, at)))],
            Texts = [.. words.Where(w => w.IsText).Select(w => new WordPair(new(w.Written, at), new(Mask, at)))],
        };
        return library with { Translations = new([data, .. library.Procedures.Select(p => Masked(p, new(Mask, at)))]) };
    }

    private static Translation Masked(Procedure procedure, Located<string> mask) => new(procedure.Source, procedure.Id, mask.As("es"), procedure.Node)
    {
        Title = mask,
        Body = new TranslatedBody(mask, [], Masked(procedure.Introduction, mask), [.. procedure.Parts.Select(p => p with
        {
            Prose = Masked(p.Prose, mask),
            Sections = [.. p.Sections.Select(s => s with { Heading = mask, Prose = Masked(s.Prose, mask), Messages = [.. s.Messages.Select(m => Masked(m, mask))], Steps = [.. s.Steps.Select(t => Masked(t, mask))] })],
        })]),
    };

    private static Step Masked(Step step, Located<string> mask) => step with
    {
        WrittenNumber = step.WrittenNumber.As(step.Number),
        Name = mask,
        Text = [],
        Remarks = [],
        Blocks = [],
        Messages = [.. step.Messages.Select(m => Masked(m, mask))],
        Facts = [.. step.Facts.Where(f => f.Value is SpokenWords).Select(f => f with { Text = mask, Value = new SpokenWords(mask) })],
    };

    private static SafetyMessage Masked(SafetyMessage message, Located<string> mask) => message with { Nature = mask, Rest = [], Avoid = [] };

    private static System.Collections.Immutable.ImmutableArray<Block> Masked(System.Collections.Immutable.ImmutableArray<Block> blocks, Located<string> mask) =>
        [.. blocks.Take(1).Select(_ => new Paragraph([new PlainText(Mask, mask.At)], mask.At))];

    /// <summary>Text between tags, without what is stamped on things: a name with a digit or a capital in it.</summary>
    private static IEnumerable<string> Visible(string html) =>
        WebUtility.HtmlDecode(Tag().Replace(Markup.Between(html, "<main>", "</main>"), " \n ")).Split([' ', '\n', '\u00A0'], StringSplitOptions.RemoveEmptyEntries)
            .Where(w => !Stamped().IsMatch(w) && !w.Contains('ŵ', StringComparison.OrdinalIgnoreCase));

    private static IEnumerable<string> Words(string text) => Word().Matches(text).Select(m => m.Value.ToLowerInvariant());

    private static IEnumerable<string> Spanish()
    {
        var words = Rendering.Words.Spanish;
        foreach (var property in typeof(Words).GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.PropertyType == typeof(string)))
            yield return (string)property.GetValue(words)!;
        foreach (var judge in new[] { "least", "most", "mean", "spread", "sum", "each" })
            yield return words.Judge(judge);
        foreach (var gathered in new[] { "sum", "mean", "least", "most", "spread" })
            yield return words.Gathered(gathered);
        foreach (var signal in Enum.GetValues<SignalWord>())
            yield return words.Signal(signal);
        foreach (var outcome in new[] { "passed", "failed" })
            yield return words.TestResult(outcome)!;
        foreach (var ending in Enum.GetValues<EndingKind>())
            yield return words.Ending(ending);
        foreach (var blocked in new[] { "engine-start", "travel", "closing" })
            yield return words.Forbids(blocked);
    }

    [GeneratedRegex("<[^>]+>", RegexOptions.Singleline)]
    private static partial Regex Tag();

    [GeneratedRegex(@"\p{L}{3,}")]
    private static partial Regex Word();

    [GeneratedRegex("[0-9]")]
    private static partial Regex Stamped();
}
