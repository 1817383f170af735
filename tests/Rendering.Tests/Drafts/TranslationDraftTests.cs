using System.Text;
using System.Text.RegularExpressions;
using Witnessmark.Compiler;
using Witnessmark.Harness;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Rendering.Tests.Drafts;

public sealed partial class TranslationDraftTests
{
    private static readonly IReadOnlyList<RawFile> Demo = Repo.Files(Repo.OneBrake);
    private static readonly IReadOnlyList<RawFile> Workshop = Repo.Files(Repo.Trial);

    /// <summary>What a translation that nobody has begun to write over may have.</summary>
    private static readonly string[] Expected = ["translation-untouched", "translation-word-missing", "translation-performed-missing", "comparison-missing"];

    public static TheoryData<string> Translated => ["wheel-end/wb-40.es.md", "common/wb-60.es.md"];

    public static TheoryData<string> Procedures => [.. Pipeline.Check(Workshop).Library.Procedures.Names];

    [Theory]
    [MemberData(nameof(Translated))]
    public void A_draft_of_what_is_translated_has_the_marks_and_places_of_its_translation(string path)
    {
        var without = Demo.Where(f => f.Path != path).ToList();
        var draft = Assert.Single(Pipeline.DraftTranslation(without, new NewTranslation(Id(path), SheetLanguages.Spanish, null)).Files);
        Assert.Equal(path, draft.Path);
        Assert.Equal(Frame(Text(Demo.Single(f => f.Path == path).Bytes)), Frame(Text(draft.Bytes)));
    }

    [Theory]
    [MemberData(nameof(Translated))]
    public void Each_place_of_a_draft_is_a_finding_and_nothing_is_printed(string path)
    {
        var without = Demo.Where(f => f.Path != path).ToList();
        var bench = Drafted(without, Id(path), out var draft);
        var own = bench.Findings.Where(f => f.At.Source.Path == path).ToList();
        Assert.Empty(own.Select(f => f.Rule.Name).Except(Expected));
        // a heading of one word aside, which the demo has none of
        Assert.Equal(Original().Count(draft), own.Count(f => f.Rule.Name == "translation-untouched"));
        Assert.DoesNotContain(Pipeline.Build(bench, "0.0.0"), f => f.Path.Contains("-es-", StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Procedures))]
    public void Whatever_is_written_in_a_procedure_its_draft_is_read_and_matches(string id)
    {
        var bench = Drafted(Workshop, id, out _);
        var own = bench.Findings.Where(f => f.At.Source.Path.EndsWith(".es.md", StringComparison.Ordinal)).Where(f => !Expected.Contains(f.Rule.Name)).ToList();
        // the reader's width and what only Spanish words can put right aside
        Assert.Empty(own.Select(f => $"{f.Rule.Name}: {f.Found}"));
    }

    private static Bench Drafted(IReadOnlyList<RawFile> files, string id, out string text)
    {
        var draft = Assert.Single(Pipeline.DraftTranslation(files, new NewTranslation(id, SheetLanguages.Spanish, null)).Files);
        text = Text(draft.Bytes);
        return Pipeline.Check([.. files, RawFile.Of(draft.Path, draft.Bytes.ToArray())]);
    }

    private static string Id(string path) => Path.GetFileName(path).Split('.')[0].ToUpperInvariant();

    private static string Text(ReadOnlyMemory<byte> bytes) => Encoding.UTF8.GetString(bytes.Span);

    /// <summary>What a translator leaves as it is: marks, numbers of steps, signal words, keys, depth of headings.</summary>
    private static IEnumerable<string> Frame(string text) => Kept().Matches(text[text.IndexOf("\n---\n", StringComparison.Ordinal)..]).Select(m => m.Value);

    [GeneratedRegex(@"(?m)^ *- original: \w{4}$|^\d+\. \*\*|^> \*\*\p{L}+:|^ +- (?:hold|call|answer):|^#+ ")]
    private static partial Regex Kept();

    [GeneratedRegex(@"(?m)^ *- original: ")]
    private static partial Regex Original();
}
