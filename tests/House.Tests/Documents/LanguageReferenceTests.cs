using Witnessmark.Compiler;
using Witnessmark.Harness;
using Witnessmark.Language.Model;
using Witnessmark.Reading.Shapes;

namespace Witnessmark.House.Tests.Documents;

/// <summary>The language reference says what the program reads. WITNESSMARK_APPROVE=1 writes it anew.</summary>
public sealed class LanguageReferenceTests
{
    private const string Page = "site/pages/reference.md";

    [Fact]
    public void The_reference_is_what_the_program_reads_by() =>
        Approved.Check($"../{Page}", LanguageReference.Write());

    [Fact]
    public void No_fact_key_or_rule_is_missing_in_it()
    {
        var page = House.Read(Page);

        Assert.Empty(FactWords.All.Select(f => f.Spelling).Concat(Catalog.Rules.Select(r => r.Name)).Where(word => !page.Contains($"\n| `{word}` |", StringComparison.Ordinal)));
        Assert.Empty(LanguageReference.Files.SelectMany(f => Keys(f.Keys, [])).Where(key => !page.Contains($"`{key}`", StringComparison.Ordinal)));
    }

    private static IEnumerable<string> Keys(Choice choice, HashSet<Shape> seen) => choice.By.Select(t => t.Shape).Append(choice.Else)
        .Where(seen.Add)
        .SelectMany(shape => shape.Rows.Concat(shape.Other is { } other ? [other] : []))
        .SelectMany(row => Below(row.Holds) is { } below ? Keys(below, seen).Prepend(row.Key) : [row.Key]);

    private static Choice? Below(Holds holds) => holds switch
    {
        Below below => below.Shape,
        Each each => each.Shape,
        Members members => members.Choice,
        _ => null,
    };
}
