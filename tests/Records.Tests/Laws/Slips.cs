using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;

namespace Witnessmark.Records.Tests.Laws;

/// <summary>Slips of writing that can be meant in one way only.</summary>
internal static partial class Slips
{
    public static ImmutableArray<(string Words, LayoutChanges.Change Make)> All { get; } =
    [
        ("facts that slipped out", (p, t, d) => p.EndsWith(".md", StringComparison.Ordinal) ? FactsOfAStep().Replace(t, m => d.OneIn(6) ? Outward(m, d.Below(3)) : m.Value) : t),
        ("numbers that run on from a wrong one", (p, t, d) => p.EndsWith(".md", StringComparison.Ordinal) ? Renumbered(t, d) : t),
        ("decimal commas", (p, t, d) => p.EndsWith(".yaml", StringComparison.Ordinal) ? Decimal().Replace(t, m => d.OneIn(3) ? m.Value.Replace('.', ',') : m.Value) : t),
        ("capitals in a key", (p, t, d) => p.EndsWith(".md", StringComparison.Ordinal) ? Key().Replace(t, m => d.OneIn(6) ? m.Value.ToUpperInvariant() : m.Value) : t),
        ("low lines in a name", (p, t, d) => p.EndsWith(".md", StringComparison.Ordinal) ? Handled().Replace(t, m => d.OneIn(3) ? m.Value.Replace('-', '_') : m.Value) : t),
        ("a pin that is missing", (p, t, d) => p.EndsWith(".md", StringComparison.Ordinal) ? Pin().Replace(t, "", 1) : t),
        ("a signal word in small letters", (p, t, d) => p.EndsWith(".md", StringComparison.Ordinal) ? Signal().Replace(t, m => d.OneIn(3) ? "**" + m.Groups[1].Value + m.Groups[2].Value.ToLowerInvariant() + ":" : m.Value) : t),
    ];

    private static string Outward(Match step, int columns) =>
        step.Groups[1].Value + Regex.Replace(step.Groups[2].Value, "^    ", new string(' ', columns), RegexOptions.Multiline);

    /// <summary>From one step on all numbers are one or two too high, as after a step that was put in and taken out again.</summary>
    private static string Renumbered(string text, Dice dice)
    {
        var (from, by) = (dice.Below(20) + 1, dice.Below(2) + 1);
        return Number().Replace(text, m => int.Parse(m.Value, CultureInfo.InvariantCulture) is var n && n >= from && n < 97 ? $"{n + by}" : m.Value);
    }

    /// <summary>A step whose facts are the last that stands in it.</summary>
    [GeneratedRegex(@"(^\d{1,2}\. [^\n]*\n(?:(?!    - )    ?[^\n]+\n)*)((?:    - [a-z-]+: [^\n]*\n)+)(?=\n|\z)", RegexOptions.Multiline)]
    private static partial Regex FactsOfAStep();

    [GeneratedRegex(@"(?<=^)\d{1,2}(?=\. \*\*)", RegexOptions.Multiline)]
    private static partial Regex Number();

    /// <summary>Outside of lists: there a comma parts two things.</summary>
    [GeneratedRegex(@"(?<=^ +[a-z-]+: (?:from |below |above |up to )?)\d+\.\d{1,2}(?= (?:mm|MPa|N·m)\b)", RegexOptions.Multiline)]
    private static partial Regex Decimal();

    [GeneratedRegex(@"(?<=^    - )[a-z-]+(?=: )", RegexOptions.Multiline)]
    private static partial Regex Key();

    [GeneratedRegex(@"(?<=^    - (?:fit|remove|tighten|measure|tool|test|work-out): )[a-z]+-[a-z-]+(?=\n| \d)", RegexOptions.Multiline)]
    private static partial Regex Handled();

    [GeneratedRegex(@"^uses:\n(?:  WB-\d+: [0-9.]+\n)+", RegexOptions.Multiline)]
    private static partial Regex Pin();

    [GeneratedRegex(@"(?<=^> )\*\*([A-Z])([A-Z]+):", RegexOptions.Multiline)]
    private static partial Regex Signal();
}
