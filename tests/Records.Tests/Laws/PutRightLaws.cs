using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Text;
using CsCheck;
using Witnessmark.Compiler;
using Witnessmark.Language.Text;

namespace Witnessmark.Records.Tests.Laws;

/// <summary>Laws of <c>check --put-right</c>: what is put right says again what it said before the slip, and nothing else has moved.</summary>
public sealed class PutRightLaws(ITestOutputHelper output)
{
    [Fact]
    public void Slips_put_right_say_what_was_meant_and_doing_it_twice_does_nothing()
    {
        var tried = new ConcurrentDictionary<string, int>(StringComparer.Ordinal);
        Gen.Select(Gen.Int[0, 1], Gen.Int, Gen.Int[1, 6]).Sample((at, seed, count) =>
        {
            var workshop = LawWorkshop.All[at];
            var (texts, words) = Slipped(workshop.Texts, new Dice(seed), count, tried);
            var once = PutRight(texts);
            Assert.True(once.Files.All(f => texts.ContainsKey(f.Path)), "a file has come into being");
            var after = texts.SetItems(once.Files.Select(f => KeyValuePair.Create(f.Path, Encoding.UTF8.GetString(f.Bytes.Span))));
            var (library, fault) = LawWorkshop.Read(after);
            Assert.True(fault is null, $"{workshop.Name}: {words}: {fault?.Found} {fault?.At.Source.Path}:{fault?.At.Start.Line}");
            Assert.All(workshop.Hashes, h => Assert.True(h.Value == LawWorkshop.HashOf(library, h.Key), $"{workshop.Name}: {words}: {h.Key} says something else"));
            Assert.Empty(PutRight(after).Files);
        }, iter: 40);
        output.WriteLine(string.Join(", ", tried.OrderBy(t => t.Key, StringComparer.Ordinal).Select(t => $"{t.Key} {t.Value}")));
        Assert.All(Slips.All, s => Assert.True(tried.GetValueOrDefault(s.Words) > 0, $"{s.Words} was never tried"));
    }

    /// <summary>Comments and everything that no slip touched stand as they stood, letter by letter.</summary>
    [Fact]
    public void Lines_without_a_slip_stay_as_they_were()
    {
        Gen.Select(Gen.Int[0, 1], Gen.Int).Sample((at, seed) =>
        {
            var workshop = LawWorkshop.All[at];
            var (texts, words) = Slipped(workshop.Texts, new Dice(seed), 3, null);
            foreach (var file in PutRight(texts).Files)
            {
                var before = texts[file.Path].Split('\n');
                var good = workshop.Texts[file.Path].Split('\n').Intersect(before).ToHashSet(StringComparer.Ordinal);
                var now = Encoding.UTF8.GetString(file.Bytes.Span).Split('\n').ToHashSet(StringComparer.Ordinal);
                Assert.True(good.IsSubsetOf(now), $"{file.Path} after {words}: {good.Except(now).FirstOrDefault()}");
            }
        }, iter: 20);
    }

    private static WorkshopPutRight PutRight(ImmutableSortedDictionary<string, string> texts) =>
        Pipeline.PutRight([.. texts.Select(t => RawFile.Of(t.Key, Encoding.UTF8.GetBytes(t.Value)))], only: null);

    private static (ImmutableSortedDictionary<string, string> Texts, string Words) Slipped(
        ImmutableSortedDictionary<string, string> texts, Dice dice, int count, ConcurrentDictionary<string, int>? tried)
    {
        var said = new List<string>();
        for (var i = 0; i < count; i++)
        {
            var (words, make) = dice.Of(Slips.All);
            foreach (var path in texts.Keys.Where(p => !p.Contains(".es.", StringComparison.Ordinal) && dice.OneIn(2)).ToList())
                if (make(path, texts[path], dice) is var slipped && slipped != texts[path])
                {
                    texts = texts.SetItem(path, slipped);
                    said.Add($"{words} in {path}");
                    tried?.AddOrUpdate(words, 1, (_, n) => n + 1);
                }
        }
        return (texts, string.Join(", then ", said));
    }
}
