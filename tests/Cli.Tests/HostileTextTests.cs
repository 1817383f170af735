using System.Collections.Immutable;
using System.Text;
using System.Text.RegularExpressions;
using Witnessmark.Compiler;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Records;

namespace Witnessmark.Cli.Tests;

/// <summary>Markup in every text of the demo that takes one, through to every page, sheet and blank.</summary>
public sealed partial class HostileTextTests
{
    private const string Escaped = "&lt;script&gt;alert(1)&lt;/script&gt;&quot;&#39;&gt;&lt;img src=x onerror=alert(1)&gt;";

    private static readonly Lazy<(IReadOnlyList<RawFile> Files, int Taken)> Everywhere = new(HostileText.Everywhere);

    [Fact]
    public void Enough_texts_take_it_for_the_others_to_prove_anything() => Assert.InRange(Everywhere.Value.Taken, 120, 5000);

    [Fact]
    public void No_page_and_no_sheet_has_it_as_markup()
    {
        var bench = Pipeline.Check(Everywhere.Value.Files);
        Assert.False(bench.HasFaults, bench.Findings.FirstOrDefault(f => f.Severity == Severity.Fault)?.Found);
        var pages = Pipeline.Build(bench, "0").Concat(Issued(Everywhere.Value.Files)).Where(f => f.Path.EndsWith(".html", StringComparison.Ordinal)).ToList();
        Assert.All(pages, IsHarmless);
        Assert.Contains(pages, p => Text(p).Contains(Escaped, StringComparison.Ordinal));
    }

    [Fact]
    public void The_blank_reads_as_the_blank_of_the_demo_does()
    {
        var (hostile, plain) = (Blank(Everywhere.Value.Files), Blank(HostileText.Demo()));
        Assert.Equal(plain.Entries.Select(e => e.Step.Value), hostile.Entries.Select(e => e.Step.Value));
        Assert.Equal(plain.Entries.Select(e => e.Values.Length), hostile.Entries.Select(e => e.Values.Length));
        Assert.Equal(Keys(plain), Keys(hostile));
    }

    /// <summary>Wherever the markup's words are, they stand in their escaped form; a policy forbids scripts all the same.</summary>
    private static void IsHarmless(OutputFile page)
    {
        var text = Text(page);
        // a fact is printed as it is written, with the backslashes that keep Markdown from reading it
        // a drawing breaks and cuts long words; what stands in it without any bracket is words
        var others = Drawn().Replace(text, "").Replace("\\", "", StringComparison.Ordinal).Replace(Escaped, "", StringComparison.Ordinal);
        Assert.DoesNotContain("alert(1)", others, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", text, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<img", text, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotMatch(Handler(), others);
        Assert.Contains("default-src 'none'", text.Replace("&#39;", "'", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    private static Language.Model.SignOff Blank(IReadOnlyList<RawFile> files)
    {
        var blank = Issued(files).Single(f => f.Path.EndsWith(".yaml", StringComparison.Ordinal));
        var findings = new FindingList();
        var read = SignOffReader.Read(new RawFile(blank.Path, blank.Bytes.Length, blank.Bytes), findings);
        Assert.Empty(findings.InReadingOrder().Select(f => f.Found));
        return Assert.IsType<Language.Model.SignOff>(read);
    }

    private static IEnumerable<string> Keys(Language.Model.SignOff blank) => Assert.IsType<DataMap>(blank.Node).Entries.Select(e => e.Key.Value);

    private static ImmutableArray<OutputFile> Issued(IReadOnlyList<RawFile> files)
    {
        var bench = Pipeline.Check(files);
        var copy = Pipeline.Issue(bench, new IssueOrder("WB-40", null, "14", "0417", "CL", "RK", new DateTimeOffset(2031, 6, 11, 6, 40, 0, TimeSpan.FromHours(2)), null));
        Assert.Null(copy.Refusal);
        return copy.Files;
    }

    private static string Text(OutputFile file) => Encoding.UTF8.GetString(file.Bytes.Span);

    [GeneratedRegex("<text [^<>]*>[^<>]*</text>")]
    private static partial Regex Drawn();

    /// <summary>An attribute that runs something, inside a real tag.</summary>
    [GeneratedRegex("<[a-z][^<>]*\\son[a-z]+=", RegexOptions.IgnoreCase)]
    private static partial Regex Handler();
}
