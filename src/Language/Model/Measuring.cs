using System.Collections.Immutable;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;

namespace Witnessmark.Language.Model;

/// <summary>Something measured, or looked at: then it has <see cref="LookFor"/> and <see cref="Verdicts"/> and no bands.</summary>
public sealed record ReadingItem(Located<string> Id, DataNode Node) : IItem
{
    /// <summary>The part that is measured: one row of points a piece.</summary>
    public Located<string>? Of { get; init; }

    /// <summary>Points a piece; 1 when not written.</summary>
    public Located<int>? Points { get; init; }

    /// <summary>True for <c>points: up to 6</c>.</summary>
    public bool UpToPoints { get; init; }

    /// <summary><c>at: [12, 4, 8]</c>: where each point is, in the order of the boxes; empty when nobody wrote it.</summary>
    public ImmutableArray<Located<string>> PointNames { get; init; } = [];

    public Located<Quantity>? Resolution { get; init; }

    public Located<QuantityRange>? Plausible { get; init; }

    /// <summary>least, most, mean, each, spread or sum; each when not written.</summary>
    public Located<string>? Judge { get; init; }

    public ImmutableArray<ReadingBand> Bands { get; init; } = [];

    public Located<string>? Gauge { get; init; }

    /// <summary>What must be looked at or measured first, so that this reads true: the hub turned, its rollers seated.</summary>
    public Located<string>? TakenAfter { get; init; }

    public Located<string>? LookFor { get; init; }

    public ImmutableArray<Located<string>> Verdicts { get; init; } = [];

    public Located<string>? What { get; init; }

    /// <summary>What to do when the reading is outside: printed under the boxes.</summary>
    public Located<string>? Outside { get; init; }

    public Located<string>? Basis { get; init; }

    public bool IsLook => LookFor is not null;

    /// <summary>Its limits are of a difference between readings: a spread of 1 °C is 1.8 °F, not 34.</summary>
    public bool JudgesDifference => Judge?.Value == "spread";

    /// <summary>Names of the results it can have.</summary>
    public IEnumerable<string> Results => IsLook ? Verdicts.Select(v => v.Value) : Bands.Select(b => b.Name.Value);
}

public sealed record ReadingBand(Located<string> Name, Located<QuantityRange> Range);

/// <summary>Worked out from readings by a formula.</summary>
public sealed record WorkedValue(Located<string> Id, DataNode Node) : IItem
{
    public Located<string>? Formula { get; init; }

    public Located<QuantityRange>? Accept { get; init; }

    /// <summary><c>accept: as clearance of brake-stack</c>: the stack's name.</summary>
    public Located<string>? AcceptAsClearanceOf { get; init; }

    public Located<Quantity>? Round { get; init; }

    public ImmutableArray<Located<Quantity>> FromStock { get; init; } = [];

    public Located<string>? Pieces { get; init; }

    public Located<string>? Outside { get; init; }
    public Located<string>? Basis { get; init; }
}

public sealed record TestItem(Located<string> Id, DataNode Node) : IItem
{
    public Located<string>? Medium { get; init; }
    public Located<Quantity>? Pressure { get; init; }
    public Located<Quantity>? AtMost { get; init; }
    public Located<Quantity>? Settle { get; init; }
    public Located<Quantity>? Hold { get; init; }
    public Located<Quantity>? SecondLook { get; init; }
    public Located<QuantityRange>? GaugeRange { get; init; }
    public ImmutableArray<Located<string>> Readings { get; init; } = [];

    /// <summary>What makes it passed: a condition, or words where people judge (<c>by eye</c>).</summary>
    public Located<string>? Passes { get; init; }

    /// <summary>Null where <see cref="Passes"/> is words.</summary>
    public Condition? PassesWhen { get; init; }

    /// <summary>How the machine is loaded, in words, and how fast it goes.</summary>
    public Located<string>? Load { get; init; }
    public Located<Quantity>? Speed { get; init; }
    public Located<string>? What { get; init; }

    /// <summary>States that undo a passed test, and happenings that do.</summary>
    public ImmutableArray<Located<Condition>> LostWhen { get; init; } = [];
    public ImmutableArray<Happening> LostAfter { get; init; } = [];
    public Located<string>? Basis { get; init; }
}
