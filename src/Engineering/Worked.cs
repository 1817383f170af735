namespace Witnessmark.Engineering;

/// <summary>A result and how it was worked out, ready to print: <c>π/4 × (16 − 0.9382 × 2)² = 156.7 mm²</c>.</summary>
/// <param name="Value">Not rounded; the line shows it rounded.</param>
public sealed record Worked<T>(T Value, string Line);
