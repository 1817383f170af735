using Witnessmark.Compiler;
using Witnessmark.Harness;
using Witnessmark.Language.Model;

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
        Assert.Empty(AllKeys.Of(LanguageReference.Files.Select(f => f.Keys)).Where(key => !page.Contains($"`{key}`", StringComparison.Ordinal)));
    }
}
