using Witnessmark.Harness;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Steps;

namespace Witnessmark.Reading.Tests.Steps;

/// <summary>What the cases make people read, word for word.</summary>
public sealed class MessageTests
{
    [Theory]
    [MemberData(nameof(CaseTests.Cases), MemberType = typeof(CaseTests))]
    public void A_finding_says_what_was_found_why_it_matters_and_what_to_do(string name)
    {
        var findings = new FindingList();
        ProcedureReader.Read(new SourceText($"wheel-end/{name}.md", CaseTests.WithoutMarks(Repo.Read("tests", "Reading.Tests", "Cases", "Steps", name + ".md"))), findings);
        Approved.Check($"Reading.Tests/Cases/Steps/Messages/{name}.txt", string.Join('\n', findings.InReadingOrder().Select(Message)));
    }

    private static string Message(Finding finding) => $"""
        {finding.At.Start.Line}:{finding.At.Start.Column} {finding.Rule.Name}  «{finding.At.Text.ReplaceLineEndings("⏎")}»
          {finding.Found}
          {finding.Why}
          {finding.PutRight}
        """;
}
