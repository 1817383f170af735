using System.Text;
using System.Text.RegularExpressions;
using Witnessmark.Harness;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Records;

namespace Witnessmark.Reading.Tests.Data;

/// <summary>
/// Each file in Cases/Data is a data file as somebody might write it. <c># fault: name</c> at the end of a line says which
/// finding belongs to that line; where nothing is marked, nothing may be found.
/// </summary>
public sealed partial class DataCaseTests
{
    public static TheoryData<string> Cases => [.. Directory.EnumerateFiles(Folder).Select(f => Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Cases))]
    public void What_is_found_is_what_the_case_is_marked_with(string name)
    {
        var text = File.ReadAllText(Path.Combine(Folder, name + ".yaml"));
        var findings = Read(name, Marker().Replace(text, m => new string(' ', m.Length)));
        Assert.Equal(InOrder(Marked(text)), InOrder(findings.Select(f => $"line {f.At.Start.Line}: {f.Rule.Name}")));
        Assert.All(findings, f => Assert.True(f.Found.Length > 0 && f.Why.Length > 0 && f.PutRight.Length > 0, f.Rule.Name));
    }

    [Fact]
    public void Every_message_is_one_that_a_person_has_read()
    {
        var messages = new StringBuilder();
        foreach (var name in Directory.EnumerateFiles(Folder).Select(f => Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal))
            foreach (var f in Read(name, Marker().Replace(File.ReadAllText(Path.Combine(Folder, name + ".yaml")), m => new string(' ', m.Length))))
                messages.Append($"{name}:{f.At.Start.Line}:{f.At.Start.Column} [{f.Rule.Name}] at `{f.At.Text}`\n  {f.Found}\n  {f.Why}\n  {f.PutRight}\n");
        Approved.Check("Reading.Tests/Approved/data-messages.txt", messages.ToString());
    }

    private static string Folder => Repo.Path("tests", "Reading.Tests", "Cases", "Data");

    /// <summary>A case stands alone, so that a missing workshop file is not its fault.</summary>
    private static IReadOnlyList<Finding> Read(string name, string text)
    {
        var findings = new FindingList();
        var file = RawFile.Of(name + ".yaml", Encoding.UTF8.GetBytes(text));
        if (text.Contains("record:", StringComparison.Ordinal))
            SignOffReader.Read(file, findings);
        else
            WorkshopReader.Read([file], findings);
        return [.. findings.InReadingOrder().Where(f => f.Rule.Name != "workshop-missing")];
    }

    private static string InOrder(IEnumerable<string> lines) => string.Join('\n', lines.Order(StringComparer.Ordinal));

    private static IEnumerable<string> Marked(string text) =>
        text.Split('\n').Select((line, i) => (Line: i + 1, Match: Marker().Match(line))).Where(l => l.Match.Success)
            .SelectMany(l => l.Match.Groups[1].Value.Split(',').Select(rule => $"line {l.Line}: {rule.Trim()}"));

    [GeneratedRegex(@"# fault: ([a-z0-9, -]+)")]
    private static partial Regex Marker();
}
