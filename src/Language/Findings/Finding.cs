using System.Collections.Immutable;
using Witnessmark.Language.Text;

namespace Witnessmark.Language.Findings;

/// <summary>
/// Something that a mechanic should know about a text, as data. How it looks is decided in Rendering/Messages.
/// </summary>
/// <param name="Found">What was found, in one sentence that stands alone, with the numbers.</param>
/// <param name="Why">Why it matters on the machine.</param>
/// <param name="PutRight">What to do.</param>
public sealed record Finding(RuleInfo Rule, Location At, string Found, string Why, string PutRight)
{
    /// <summary>Other places that belong to it, also in other files.</summary>
    public ImmutableArray<FurtherPlace> Further { get; init; } = [];

    /// <summary>How it was worked out, ready to print: <c>0.15 × 16 mm × 97.5 kN = 234 N·m</c>.</summary>
    public ImmutableArray<string> Worked { get; init; } = [];

    /// <summary>What puts it right without anybody having to think; null where somebody must.</summary>
    public Correction? Correction { get; init; }

    public Severity Severity => Rule.Severity;
}

/// <param name="Says">What is there, as a half sentence: <c>the sheet says 9</c>.</param>
public sealed record FurtherPlace(Location At, string Says);
