using System.Collections.Immutable;

namespace Witnessmark.Checking.Rules.Torque;

/// <summary>
/// Nut factors that handbooks give for a state of the threads. They contradict each other, so a factor outside is a
/// question and not a fault. Sources: Shigley, 9th edition, table 8-15 (black 0.30, zinc 0.20, lubricated 0.18,
/// anti-seize 0.12); trade charts (dry 0.18 to 0.22, light oil 0.15, wax 0.10).
/// </summary>
internal sealed record UsualFriction(string Condition, decimal Low, decimal High)
{
    public const string Source = "Shigley, table 8-15, and trade charts";

    public static readonly ImmutableArray<UsualFriction> All =
    [
        new("dry", 0.18m, 0.30m),
        new("oiled", 0.15m, 0.18m),
        new("paste", 0.10m, 0.12m),
    ];

    public string Text => $"{Low} to {High}";

    public bool Contains(decimal nutFactor) => nutFactor >= Low && nutFactor <= High;

    public static UsualFriction? Of(string condition) => All.FirstOrDefault(u => u.Condition == condition);
}
