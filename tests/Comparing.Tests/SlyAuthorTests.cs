using System.Text;
using Witnessmark.Checking;
using Witnessmark.Harness;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;

namespace Witnessmark.Comparing.Tests;

/// <summary>
/// An author who does everything by the book but one: the version steps far enough, two people have approved, and nothing says what was taken out.
/// What <c>check --since</c> tells of each change that can hurt people stands in a file, and so does what it lets pass.
/// </summary>
public sealed class SlyAuthorTests
{
    [Fact]
    public void What_check_since_tells_and_what_it_leaves_to_two_readers()
    {
        var cases = Case.Names.Select(Case.Of).Where(c => c.IsOverTheDemo && c.Class == "hazard").Select(c => (c.Name, c.Sense, Rules: Told(c))).ToList();
        var text = new StringBuilder();
        foreach (var (title, sly) in new[]
        {
            ("told", cases.Where(c => c.Rules.Length > 0)),
            ("looser, and not told", cases.Where(c => c.Rules.Length == 0 && c.Sense == "looser")),
            ("another value, and not told", cases.Where(c => c.Rules.Length == 0 && c.Sense != "looser")),
        })
        {
            text.Append(title).Append('\n');
            foreach (var (name, _, rules) in sly)
                text.Append($"  {name,-44} {rules}".TrimEnd()).Append('\n');
        }
        Approved.Check("Comparing.Tests/what-check-since-tells.approved.txt", text.ToString());
    }

    private static string Told(Case written)
    {
        var made = Case.Read([.. written.Files.Select(ByTheBook)]);
        var findings = new FindingList();
        RuleSet.CheckChanges(written.Old, made, Comparer.Between(written.Old, made), findings);
        return string.Join(", ", findings.InReadingOrder().Select(f => f.Rule.Name).Distinct().Order(StringComparer.Ordinal));
    }

    private static RawFile ByTheBook(RawFile file)
    {
        var text = Encoding.UTF8.GetString(file.Bytes.Span)
            .Replace("version: 2.1.0", "version: 3.0.0", StringComparison.Ordinal)
            .Replace("version: 1.2.0", "version: 2.0.0", StringComparison.Ordinal)
            .Replace("WB-60: 1.2.0", "WB-60: 2.0.0", StringComparison.Ordinal)
            .Replace("approvals:\n", "approvals:\n  - {role: mechanic, by: SB, date: \"2031-07-01\"}\n  - {role: independent mechanic, by: RK, date: \"2031-07-02\"}\n", StringComparison.Ordinal);
        return RawFile.Of(file.Path, Encoding.UTF8.GetBytes(text));
    }
}
