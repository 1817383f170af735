using Witnessmark.Harness;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Reading.References;

namespace Witnessmark.Reading.Tests.Steps;

public sealed class WorkshopNamesTests
{
    /// <summary>Each row is a slip in a file of the demo workshop: what stands there, what is written instead, what is found.</summary>
    public static TheoryData<string, string, string, string, string> Slips =>
        [.. TableRows("tests", "Reading.Tests", "Cases", "Names", "slips.md").Select(r => (r[0], r[1], r[2], r[3], r[4]))];

    [Theory]
    [InlineData("tests/Workshops/one-brake")]
    [InlineData("tests/Workshops/trial")]
    public void Every_name_of_the_workshop_is_declared_and_every_value_can_be_had(string folder)
    {
        var library = WorkshopReader.Read(Repo.Files(Repo.Path(folder.Split('/'))), new FindingList());
        var findings = new FindingList();
        ReferenceCheck.Check(library, findings);
        Assert.NotEmpty(library.Procedures);
        Told.Nothing(findings);
    }

    [Theory]
    [MemberData(nameof(Slips))]
    public void A_slip_is_found_at_its_word_and_says_what_was_meant(string path, string written, string slip, string rule, string says)
    {
        var files = Repo.Files(Repo.OneBrake).Select(f => f.Path == path ? Slipped(f, written, slip) : f).ToList();
        var findings = new FindingList();
        ReferenceCheck.Check(WorkshopReader.Read(files, findings), findings);
        var finding = Assert.Single(findings.InReadingOrder());
        Assert.Equal(rule, finding.Rule.Name);
        Assert.Equal(path, finding.At.Source.Path);
        Assert.Contains(says, $"{finding.Found} {finding.PutRight}", StringComparison.Ordinal);
        Assert.True(slip.Contains(finding.At.Text, StringComparison.Ordinal) || finding.At.Text.Contains(slip, StringComparison.Ordinal), finding.At.Text);
    }

    private static RawFile Slipped(RawFile file, string written, string slip)
    {
        var text = System.Text.Encoding.UTF8.GetString(file.Bytes.Span);
        var at = text.IndexOf(written, StringComparison.Ordinal);
        Assert.True(at >= 0, $"{file.Path} has no {written}");
        return RawFile.Of(file.Path, System.Text.Encoding.UTF8.GetBytes(text[..at] + slip + text[(at + written.Length)..]));
    }

    /// <summary>Cells in backquotes lose them.</summary>
    private static IEnumerable<string[]> TableRows(params string[] path) =>
        Repo.Read(path).Split('\n')
            .Where(line => line.StartsWith("| `", StringComparison.Ordinal))
            .Select(line => line.Trim('|', ' ').Split(" | ").Select(c => c.Trim().Trim('`')).ToArray());
}
