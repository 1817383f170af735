using Witnessmark.Language.Text;

namespace Witnessmark.Language.Quantities;

/// <summary>What is wrong with a written quantity, and where in its text.</summary>
public enum QuantityProblem
{
    /// <summary>Nothing that looks like a number.</summary>
    NoNumber,

    /// <summary>A number without a unit.</summary>
    BareNumber,

    /// <summary>A unit that is not in the table.</summary>
    UnknownUnit,

    /// <summary>A decimal comma: <c>4,60 mm</c>.</summary>
    DecimalComma,

    /// <summary>A tolerance in a unit of another kind, or the ends of a range in two units.</summary>
    KindsDiffer,

    /// <summary>The lower bound is above the upper one.</summary>
    Backward,

    /// <summary>More digits than can be kept exactly, or a size no machine has.</summary>
    TooLong,

    /// <summary>Text left over behind a complete quantity.</summary>
    LeftOver,

    /// <summary>A number in pieces that can be read in more than one way: <c>12 405 h</c>, <c>1/2 in</c>, <c>2.8-3.6 mm</c>.</summary>
    SplitNumber,
}

/// <param name="At">Where, counted from the start of the text that was read.</param>
/// <param name="Suggestion">The nearest unit, or the text as it should stand; null when there is none.</param>
public sealed record QuantityFault(QuantityProblem Problem, TextSpan At, string? Suggestion);

/// <summary>A value, or why there is none.</summary>
public readonly record struct Parsed<T>(T Value, QuantityFault? Fault)
    where T : struct
{
    public bool Ok => Fault is null;

    public override string ToString() => Fault is null ? $"{Value}" : $"{Fault}";
}
