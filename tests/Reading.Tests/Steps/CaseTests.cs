using System.Text.RegularExpressions;
using Witnessmark.Harness;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Steps;

namespace Witnessmark.Reading.Tests.Steps;

/// <summary>
/// Files a mechanic could read, with what is to be found written at the end of the line: <c>&lt;!-- fault: name --&gt;</c>.
/// The marks are blanked before reading; where none stands nothing may be found.
/// </summary>
public sealed partial class CaseTests
{
    public static TheoryData<string> Cases => [.. ProcedureFiles.In("tests", "Reading.Tests", "Cases", "Steps").Select(p => Path.GetFileNameWithoutExtension(p))];

    [Theory]
    [MemberData(nameof(Cases))]
    public void What_is_marked_is_found_and_nothing_else(string name)
    {
        var written = Repo.Read("tests", "Reading.Tests", "Cases", "Steps", name + ".md");
        var findings = new FindingList();
        ProcedureReader.Read(new SourceText($"wheel-end/{name}.md", WithoutMarks(written)), findings);
        var found = findings.InReadingOrder().Select(f => $"{f.At.Start.Line}: {f.Rule.Name}");
        Assert.Equal(string.Join('\n', Expected(written)), string.Join('\n', found));
    }

    internal static string WithoutMarks(string written) => Mark.Replace(written, m => new string(' ', m.Length));

    private static IEnumerable<string> Expected(string written) =>
        written.Split('\n').SelectMany((line, i) => Mark.Matches(line).Select(m => $"{i + 1}: {m.Groups[1].Value}"));

    [GeneratedRegex("<!-- fault: ([a-z-]+) -->")]
    private static partial Regex Mark { get; }
}
