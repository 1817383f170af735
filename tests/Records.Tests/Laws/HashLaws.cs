using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Globalization;
using CsCheck;

namespace Witnessmark.Records.Tests.Laws;

/// <summary>Laws of the hash, both ways: no layout changes it, and everything that means something does.</summary>
public sealed class HashLaws(ITestOutputHelper output)
{
    private static readonly Gen<(int Workshop, int Seed, int Count)> Layouts = Gen.Select(Gen.Int[0, LawWorkshop.All.Length - 1], Gen.Int, Gen.Int[1, 6]);

    [Fact]
    public void Layouts_put_together_at_random_never_change_a_hash()
    {
        var tried = new ConcurrentDictionary<string, int>(StringComparer.Ordinal);
        Layouts.Sample((at, seed, count) =>
        {
            var workshop = LawWorkshop.All[at];
            var (texts, words) = LaidOut(workshop, new Dice(seed), count, tried);
            var (library, fault) = LawWorkshop.Read(texts);
            Assert.True(fault is null, $"{workshop.Name}: {words}: cannot be read any more: {fault?.Found} {fault?.At.Source.Path}:{fault?.At.Start.Line}");
            Assert.All(workshop.Hashes, h => Assert.True(h.Value == LawWorkshop.HashOf(library, h.Key), $"{workshop.Name}: {words} changed the hash of {h.Key}:\n{Differing(workshop, library, h.Key)}"));
        }, iter: 200);
        output.WriteLine(Told(tried));
        Assert.All(LayoutChanges.All, l => Assert.True(tried.GetValueOrDefault(l.Words) > 0, $"{l.Words} was never tried"));
    }

    [Fact]
    public void Tidying_what_is_tidy_changes_nothing()
    {
        Layouts.Sample((at, seed, count) =>
        {
            var (texts, words) = LaidOut(LawWorkshop.All[at], new Dice(seed), count, null);
            foreach (var (path, text) in texts)
            {
                var once = LayoutChanges.Tidy(path, text);
                Assert.True(once == LayoutChanges.Tidy(path, once), $"{path} after {words}: tidied twice it is not as tidied once");
            }
        }, iter: 60);
    }

    /// <summary>A text that the reader refuses has no hash: counted apart, and no more than a third.</summary>
    [Fact]
    public void Whatever_means_something_else_changes_the_hash_of_all_that_it_reaches()
    {
        var (tried, refused) = (new ConcurrentDictionary<string, int>(StringComparer.Ordinal), new ConcurrentDictionary<string, int>(StringComparer.Ordinal));
        Gen.Select(Gen.Int[0, 1], Gen.Int).Sample((at, seed) =>
        {
            var workshop = LawWorkshop.All[at];
            var dice = new Dice(seed);
            // by kind first: there are hundreds of words to one pass of the house
            var change = dice.Of(dice.Of(Kinds[at]));
            var (library, fault) = LawWorkshop.Read(change.In(workshop.Texts));
            (fault is null ? tried : refused).AddOrUpdate(change.Kind, 1, (_, n) => n + 1);
            if (fault is null)
                Assert.All(change.Procedures, id => Assert.True(workshop.Hashes[id] != LawWorkshop.HashOf(library, id), $"{workshop.Name}: {change.Words(workshop.Texts)}, and {id} has the hash that it had"));
        }, iter: 500);
        output.WriteLine($"{Told(tried)}\nrefused by the reader: {Told(refused)}");
        Assert.True(tried.Values.Sum() > 2 * refused.Values.Sum(), $"too many are refused: {Told(refused)}");
    }

    private static readonly ImmutableArray<ImmutableArray<ImmutableArray<MeaningChange>>> Kinds =
        [.. LawWorkshop.All.Take(2).Select(w => MeaningChanges.Of(w.Library).GroupBy(c => c.Kind).Select(g => g.ToImmutableArray()).ToImmutableArray())];

    private static (ImmutableSortedDictionary<string, string> Texts, string Words) LaidOut(
        LawWorkshop workshop, Dice dice, int count, ConcurrentDictionary<string, int>? tried)
    {
        var texts = workshop.Texts;
        var said = new List<string>();
        for (var i = 0; i < count; i++)
        {
            // half of all end tidied
            var (words, make) = i == count - 1 && dice.OneIn(2) ? LayoutChanges.All[^1] : dice.Of(LayoutChanges.All);
            // each once in a file: a shop spells a unit, not the spelling of another shop
            foreach (var path in texts.Keys.Where(p => dice.OneIn(3) && !said.Contains($"{words} in {p}")).ToList())
            {
                var changed = make(path, texts[path], dice);
                if (changed == texts[path])
                    continue;
                texts = texts.SetItem(path, changed);
                said.Add($"{words} in {path}");
                tried?.AddOrUpdate(words, 1, (_, n) => n + 1);
            }
        }
        return (texts, said.Count == 0 ? "nothing" : string.Join(", then ", said));
    }

    private static string Differing(LawWorkshop workshop, Language.Model.Library library, string id)
    {
        string[] Manifest(Language.Model.Library of) => of.Procedure(id) is { } p ? Hashing.ProcedureHash.Of(of, p).Manifest.Split('\n') : [];
        return string.Join('\n', Manifest(workshop.Library).Except(Manifest(library)).Take(5));
    }

    private static string Told(ConcurrentDictionary<string, int> tried) =>
        string.Create(CultureInfo.InvariantCulture, $"{tried.Values.Sum()} changes tried: {string.Join(", ", tried.OrderBy(t => t.Key, StringComparer.Ordinal).Select(t => $"{t.Key} {t.Value}"))}");
}
