using System.Collections.Immutable;
using System.Text.RegularExpressions;
using CsCheck;

namespace Witnessmark.Records.Tests.Laws;

/// <summary>Laws of <c>tidy</c> beside those of the hash: one layout comes of all, and what people wrote for people stays.</summary>
public sealed partial class TidyLaws
{
    /// <summary>What tidying takes back, and what it leaves to the author: where a line is wrapped, which quotes are used, in which order keys stand.</summary>
    private static readonly ImmutableHashSet<string> TakenBack =
        ["line ends CR LF", "line ends mixed", "a byte order mark", "letters in two codes", "step numbers", "one blank at line ends", "no line feed at the end", "units as shops spell them", "units of times", "tidy"];

    [Fact]
    public void Of_whatever_layout_that_tidying_knows_the_same_text_comes()
    {
        ImmutableArray<(string Words, LayoutChanges.Change Make)> known = [.. LayoutChanges.All.Where(l => TakenBack.Contains(l.Words))];
        Assert.Equal(TakenBack.Count, known.Length);
        Gen.Select(Gen.Int[0, LawWorkshop.All.Length - 1], Gen.Int, Gen.Int[1, 5]).Sample((at, seed, count) =>
        {
            var dice = new Dice(seed);
            foreach (var (path, written) in LawWorkshop.All[at].Texts)
            {
                var (text, said) = (written, new List<string>());
                for (var i = 0; i < count; i++)
                {
                    // each once: a shop spells a unit, not the spelling of another shop
                    var (words, make) = dice.Of([.. known.Where(k => !said.Contains(k.Words))]);
                    text = make(path, text, dice);
                    said.Add(words);
                }
                var (one, other) = (LayoutChanges.Tidy(path, text).Split('\n'), LayoutChanges.Tidy(path, written).Split('\n'));
                Assert.True(one.SequenceEqual(other), $"{path} after {string.Join(", then ", said)}: {one.Except(other).FirstOrDefault()}");
            }
        }, iter: 60);
    }

    [Fact]
    public void Every_comment_stays_where_it_stood()
    {
        var comments = 0;
        Gen.Select(Gen.Int[0, LawWorkshop.All.Length - 1], Gen.Int, Gen.Int[1, 3]).Sample((at, seed, count) =>
        {
            var dice = new Dice(seed);
            foreach (var (path, written) in LawWorkshop.All[at].Texts.Where(t => t.Key.EndsWith(".yaml", StringComparison.Ordinal)))
            {
                var text = LayoutChanges.All.Single(l => l.Words == "comments in data").Make(path, written, dice);
                for (var i = 0; i < count; i++)
                    text = dice.Of(LayoutChanges.All).Make(path, text, dice);
                Interlocked.Add(ref comments, Comments(text).Length);
                Assert.Equal(Comments(text), Comments(LayoutChanges.Tidy(path, text)));
            }
        }, iter: 60);
        Assert.True(comments > 1000, $"only {comments} comments were looked at");
    }

    /// <summary>With the key before them, in order; not the blanks at their ends, which tidying takes away.</summary>
    private static string[] Comments(string text) =>
        [.. Comment().Matches(text.Normalize().Replace("\r", "", StringComparison.Ordinal)).Select(m => $"{m.Groups[1].Value.TrimStart('\uFEFF')} {m.Groups[2].Value.TrimEnd()}")];

    [GeneratedRegex(@"^([\uFEFF]?(?:[ -]*[a-z-]+:)?)[^\n#]*(#[^\n]*)", RegexOptions.Multiline)]
    private static partial Regex Comment();
}
