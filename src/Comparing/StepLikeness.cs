using Witnessmark.Language.Model;

namespace Witnessmark.Comparing;

/// <summary>How much two steps are one: 0.6 by what they do, 0.4 by their words.</summary>
internal static class StepLikeness
{
    /// <returns>From 0, nothing in common, to 1.</returns>
    public static double Of(Step old, Step made)
    {
        var words = Common(Words(old), Words(made));
        var (before, after) = (Facts(old), Facts(made));
        return before.Count + after.Count == 0 ? words : (0.6 * Common(before, after)) + (0.4 * words);
    }

    // a fact with another number is still half of the fact
    private static List<string> Facts(Step step) => [.. step.Facts.Where(f => f.Word is not (FactWord.Was or FactWord.Time)).SelectMany(f => new[] { f.Word.Spelled(), $"{f.Word.Spelled()}: {f.Text.Value}" })];

    private static List<string> Words(Step step) =>
        [.. $"{step.Name.Value} {step.Text.Plain()}".ToUpperInvariant().Split([' ', ',', '.', ';', ':', '(', ')', '*'], StringSplitOptions.RemoveEmptyEntries)];

    /// <summary>What both have against what either has; what stands twice counts twice.</summary>
    private static double Common(List<string> a, List<string> b)
    {
        var left = b.GroupBy(w => w, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.Count(), StringComparer.Ordinal);
        var both = 0;
        foreach (var word in a)
            if (left.GetValueOrDefault(word) > 0)
            {
                left[word]--;
                both++;
            }
        return a.Count + b.Count - both == 0 ? 1 : (double)both / (a.Count + b.Count - both);
    }
}
