using System.Text.Json.Nodes;
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
    public void No_fact_or_rule_is_missing_in_it()
    {
        var page = House.Read(Page);

        Assert.Empty(FactWords.All.Select(f => f.Spelling).Concat(Catalog.Rules.Select(r => r.Name)).Where(word => !page.Contains($"\n| `{word}` |", StringComparison.Ordinal)));
    }

    [Fact]
    public void No_key_that_a_schema_has_is_missing_in_it()
    {
        var page = House.Read(Page);

        Assert.Equal(FileSchemas.All.Length, LanguageReference.Files.Length);
        Assert.Empty(FileSchemas.All.SelectMany(s => Keys(JsonNode.Parse(s.Text))).Distinct().Where(key => !page.Contains($"`{key}`", StringComparison.Ordinal)));
    }

    /// <summary>The schemas are written by another hand than the tables.</summary>
    private static IEnumerable<string> Keys(JsonNode? schema) => schema switch
    {
        JsonObject o => o.SelectMany(p => p is { Key: "properties", Value: JsonObject keys } ? keys.SelectMany(k => Keys(k.Value).Prepend(k.Key)) : Keys(p.Value)),
        JsonArray a => a.SelectMany(Keys),
        _ => [],
    };
}
