using Witnessmark.Compiler;

namespace Witnessmark.House.Tests.Documents;

/// <summary>The glossary explains the words that we use, all of them in order, and no others.</summary>
public sealed class GlossaryTests
{
    private static readonly IReadOnlyList<GlossaryEntry> Entries = Glossary.Read(House.Read(Glossary.Page));

    [Fact]
    public void It_has_as_many_entries_as_a_reader_can_take_in() =>
        Assert.InRange(Entries.Count, 60, 90);

    [Fact]
    public void Entries_stand_in_order_each_under_its_letter()
    {
        var terms = Entries.Select(e => e.Term).ToList();

        Assert.Equal(terms.OrderBy(t => t.Replace('-', ' '), StringComparer.Ordinal), terms);
        Assert.Equal(terms.Count, terms.Distinct(StringComparer.Ordinal).Count());
        Assert.Empty(Entries.Where(e => !e.Term.StartsWith(e.Letter, StringComparison.OrdinalIgnoreCase)));
    }

    [Fact]
    public void Every_entry_says_something_in_one_to_three_sentences() =>
        Assert.Empty(Entries.Where(e => !e.Meaning.EndsWith('.') || e.Meaning.Split(". ").Length > 3 || e.Meaning.Length > 300).Select(e => e.Term));

    [Fact]
    public void Every_entry_is_used_in_a_procedure_a_rule_or_a_page() =>
        Assert.Empty(Entries.Select(e => e.Term).Where(t => !Glossary.IsUsed(t, English.Value)));

    [Fact]
    public void Spanish_words_are_those_of_the_sheets() =>
        Assert.Empty(Entries.Where(e => e.Spanish is { } es && !Glossary.IsUsed(es, Spanish.Value)).Select(e => $"{e.Term}: {e.Spanish}"));

    [Fact]
    public void The_measure_sees_a_word_that_nobody_uses()
    {
        Assert.False(Glossary.IsUsed("crow-foot", "a crow's foot, and footprints of a crow"));
        Assert.True(Glossary.IsUsed("crow-foot", "Set both Crow-foots square."));
        Assert.True(Glossary.IsUsed("cavity", "two cavities"));
    }

    private static readonly Lazy<string> English = new(() => string.Join('\n',
    [
        .. House.Files("procedures", ".md").Concat(House.Files("procedures", ".yaml")).Where(f => !IsSpanish(f)).Select(House.Read),
        .. House.Files("site/pages", ".md").Where(f => f != Glossary.Page && !IsSpanish(f)).Select(House.Read),
        .. Catalog.Rules.Select(r => Catalog.Page(r.Name)!),
    ]));

    private static readonly Lazy<string> Spanish = new(() => string.Join('\n',
        House.Files("procedures").Where(IsSpanish).Concat(House.Files("src/Rendering/Words", ".cs")).Select(House.Read)));

    private static bool IsSpanish(string path) => path.Contains(".es.", StringComparison.Ordinal) || path.EndsWith("-es.md", StringComparison.Ordinal);
}
