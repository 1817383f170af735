using System.Text;
using Witnessmark.Harness;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading;
using Witnessmark.Rendering.Comparisons;

namespace Witnessmark.Comparing.Tests;

/// <summary>A case is a file: what is changed in the demo, line by line; beside it stands what an auditor reads of it.</summary>
public sealed class ComparisonTests
{
    private static readonly IReadOnlyList<RawFile> Files = Repo.Files(Repo.Path("procedures"));
    private static readonly Library Demo = Read(Files);

    public static TheoryData<string> Cases =>
        [.. Directory.EnumerateFiles(Repo.Path("tests", "Comparing.Tests", "Cases"), "*.diff").Select(f => Path.GetFileNameWithoutExtension(f)!).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Cases))]
    public void An_auditor_reads_what_was_approved(string name) =>
        Approved.Check($"Comparing.Tests/Cases/{name}.approved.txt", ComparisonText.Of(Comparer.Between(Demo, Read(Patched(name)))));

    private static Library Read(IReadOnlyList<RawFile> files) => WorkshopReader.Read(files, new FindingList());

    /// <summary>Lines behind <c>--- PATH</c>: each run of <c>-</c> lines is replaced by the <c>+</c> lines behind it.</summary>
    private static IReadOnlyList<RawFile> Patched(string name)
    {
        var texts = Files.ToDictionary(f => f.Path, f => Encoding.UTF8.GetString(f.Bytes.Span), StringComparer.Ordinal);
        var path = "";
        var (gone, come) = (new StringBuilder(), new StringBuilder());
        foreach (var line in File.ReadLines(Repo.Path("tests", "Comparing.Tests", "Cases", $"{name}.diff")).Append("--- "))
        {
            if (line.StartsWith("--- ", StringComparison.Ordinal) || (line.StartsWith('-') && come.Length > 0) || line.Length == 0)
            {
                if (gone.Length > 0)
                    texts[path] = Once(texts[path], gone.ToString(), come.ToString(), name);
                gone.Clear();
                come.Clear();
            }
            if (line.StartsWith("--- ", StringComparison.Ordinal))
                path = line[4..];
            else if (line.StartsWith('-'))
                gone.Append(line[1..]).Append('\n');
            else if (line.StartsWith('+'))
                come.Append(line[1..]).Append('\n');
        }
        return [.. texts.Select(t => RawFile.Of(t.Key, Encoding.UTF8.GetBytes(t.Value)))];
    }

    private static string Once(string text, string from, string to, string name)
    {
        var at = text.IndexOf(from, StringComparison.Ordinal);
        Assert.True(at >= 0, $"{name}: nowhere stands\n{from}");
        return text[..at] + to + text[(at + from.Length)..];
    }
}
