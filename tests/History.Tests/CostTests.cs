using System.Text;
using Witnessmark.Benchmarks;
using Witnessmark.Compiler;
using Witnessmark.Language.Text;

namespace Witnessmark.History.Tests;

/// <summary>What a comparison opens in a workshop of a thousand procedures, counted file by file and not by the clock.</summary>
public sealed class CostTests
{
    private const int Procedures = 1000;
    private const int Changed = 10;

    private static readonly IReadOnlyList<RawFile> Workshop = Generated.Workshop(Procedures);

    [Fact]
    public void Ten_changed_procedures_of_a_thousand_cost_ten()
    {
        var opened = new HashSet<string>(StringComparer.Ordinal);
        var compared = Pipeline.Compare(Counted(Workshop, "old", opened), Counted(With(TenLooser), "new", opened), only: null);

        Assert.Equal(Changed, compared.Comparison.Procedures.Length);
        Assert.Equal(2 * Changed, opened.Count(o => o.Contains("generated/gx-", StringComparison.Ordinal)));
        Assert.True(opened.Count <= (2 * Changed) + (2 * Shared), $"{opened.Count} files opened: {string.Join(", ", opened.Order(StringComparer.Ordinal))}");
    }

    [Fact]
    public void Nothing_changed_costs_nothing()
    {
        var opened = new HashSet<string>(StringComparer.Ordinal);

        Assert.Empty(Pipeline.Compare(Counted(Workshop, "old", opened), Counted(Workshop, "new", opened), only: null).Comparison.Procedures);
        Assert.Empty(opened);
    }

    [Fact]
    public void A_file_that_both_states_share_is_opened_once()
    {
        var times = new List<string>();
        var old = Workshop.Select(f => StoredFile.Of(f)).Select(f => f with { Read = () => { times.Add(f.Id); return f.Read(); } }).ToList();
        var made = With(TenLooser).Select(f => StoredFile.Of(f)).Select(f => f with { Read = () => { times.Add(f.Id); return f.Read(); } }).ToList();

        Pipeline.Compare(old, made, only: null);
        Assert.Equal(times.Distinct(StringComparer.Ordinal).Count(), times.Count);
    }

    /// <summary>Data sheets, tools, workshop file, words, register, and the common part that all perform.</summary>
    private static int Shared => Workshop.Count - Procedures;

    private static string TenLooser(string path, string text) =>
        path.StartsWith("generated/gx-000", StringComparison.Ordinal) ? text.Replace("friction-disc = 9, steel", "friction-disc = 8, steel", StringComparison.Ordinal) : text;

    private static List<RawFile> With(Func<string, string, string> change) =>
        [.. Workshop.Select(f => (File: f, Text: Encoding.UTF8.GetString(f.Bytes.Span))).Select(f => change(f.File.Path, f.Text) is var made && made == f.Text ? f.File : RawFile.Of(f.File.Path, Encoding.UTF8.GetBytes(made)))];

    private static List<StoredFile> Counted(IReadOnlyList<RawFile> files, string state, HashSet<string> opened) =>
        [.. files.Select(StoredFile.Of).Select(f => f with { Read = () => { opened.Add($"{state} {f.Path}"); return f.Read(); } })];
}
