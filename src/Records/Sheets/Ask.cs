using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Records.Sheets;

/// <summary>Something a step wants written down. <paramref name="Key"/> is its key in the sign-off entry: a declared name.</summary>
public abstract record Ask(string Key)
{
    /// <summary>In a loop: asked once for each turn, written <c>CL: passed</c> line by line. Null: once.</summary>
    public LoopTurns? Turns { get; init; }
}

/// <summary>A count: <c>friction-disc: 9</c>.</summary>
/// <param name="Mark">Short label for the box: D.</param>
public sealed record CountAsk(string Key, string Mark, int Expected, bool AtLeast) : Ask(Key);

/// <summary>A grid of readings: pieces × points.</summary>
/// <param name="Pieces">Row labels: D1 … D9; one empty label when the reading is of no part.</param>
/// <param name="Points">Boxes a row.</param>
/// <param name="Accept">Limits printed beside the boxes; null when every plausible value is accepted.</param>
public sealed record ReadingAsk(string Key, ReadingItem Reading, ImmutableArray<string> Pieces, int Points, QuantityRange? Accept) : Ask(Key)
{
    /// <summary>Names of the bands for which the step stops.</summary>
    public ImmutableArray<string> Stops { get; init; } = [];
}

/// <summary>A look with named verdicts.</summary>
public sealed record LookAsk(string Key, ReadingItem Reading) : Ask(Key)
{
    /// <summary>Verdicts for which the step stops.</summary>
    public ImmutableArray<string> Stops { get; init; } = [];
}

/// <summary>A value worked out from readings.</summary>
public sealed record WorkedAsk(string Key, WorkedValue Value, QuantityRange? Accept) : Ask(Key);

/// <summary>The ladder: every position struck as it goes in.</summary>
public sealed record StackAsk(string Key, PartStack Stack, ImmutableArray<LadderCell> Cells) : Ask(Key);

/// <param name="Label">D1</param>
/// <param name="Outer">True when the teeth are outside (steel column), false inside (friction column).</param>
/// <param name="FacedTo">piston or ring for a part faced on one side.</param>
public sealed record LadderCell(int Position, string Label, PartKind Part, bool Outer, string? FacedTo);

/// <summary>Bolts inked pass by pass.</summary>
/// <param name="Settings">What to dial in each pass, on the wrench's scale.</param>
/// <param name="Sequence">Bolt numbers in the order of tightening.</param>
public sealed record PassAsk(
    string Key,
    FastenerGroup Group,
    Wrench? Wrench,
    Wrench? Adapter,
    ImmutableArray<PassSetting> Settings,
    ImmutableArray<int> Sequence) : Ask(Key)
{
    /// <summary>Whether no step names the wrench: it is the only one on the tool list that reaches the torque.</summary>
    public bool WrenchInferred { get; init; }
}

/// <param name="Dial">What the scale shows.</param>
/// <param name="AtBolt">What the bolt gets: differs from <paramref name="Dial"/> only behind an adapter.</param>
public sealed record PassSetting(int Number, decimal Share, bool Circular, Quantity Dial, Quantity AtBolt);

/// <summary>The wrench dial setting and what it is worked out from.</summary>
public sealed record SettingAsk(string Key, Quantity Dial, string Worked) : Ask(Key);

/// <summary>A decision: one outcome is struck.</summary>
public sealed record ChoiceAsk(string Key, ImmutableArray<string> Outcomes) : Ask(Key)
{
    /// <summary>Whether it is the end of the work that is struck, not an outcome.</summary>
    public bool Ends => Key == EntryKeys.End;

    /// <summary>Whether it ends no more than the performed part: whoever performs it goes on.</summary>
    public bool EndsPart { get; init; }

    /// <summary>Outcomes for which the step stops.</summary>
    public ImmutableArray<string> Stops { get; init; } = [];
}

/// <summary>A hold point: work stops until the words are true; each blank is a box.</summary>
/// <param name="Words">The text between the blanks; one more than there are boxes.</param>
/// <param name="By">Who passes it: the checker's role when there is one.</param>
public sealed record HoldAsk(string Key, ImmutableArray<string> Words, string? By) : Ask(Key)
{
    public int Blanks => Words.Length - 1;
}

/// <summary>A second person's initials.</summary>
public sealed record CheckAsk(string Key, string Role, CheckMode Mode) : Ask(Key);

/// <summary>Which tool was used: its number is written down.</summary>
public sealed record ToolAsk(string Key, ImmutableArray<string> Tools) : Ask(Key);
