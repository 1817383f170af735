using Witnessmark.Language.Text;

namespace Witnessmark.Engineering.Formulas;

public enum FormulaProblem
{
    // of the text
    Empty,

    /// <summary>More than 1000 characters, or brackets more than 20 deep.</summary>
    TooLong,
    UnexpectedCharacter,

    /// <summary>An operator, a bracket or the end where a value belongs.</summary>
    ValueMissing,

    /// <summary>Two values side by side.</summary>
    OperatorMissing,

    /// <summary>A bracket that nothing closes, or that closes nothing.</summary>
    Bracket,
    UnknownUnit,
    DecimalComma,

    // of the values put in
    UnknownName,

    /// <summary>A name alone, with several values: it must be said which.</summary>
    SeveralValues,

    /// <summary>Added or subtracted, but not of one kind: mm and bar, or two temperatures added.</summary>
    KindsDiffer,

    /// <summary>Multiplied or divided to something that has no unit in the table.</summary>
    NoSuchUnit,
    DividedByZero,

    /// <summary>A number no machine has.</summary>
    TooLarge,
}

/// <param name="At">In the formula's text, counted from its start.</param>
/// <param name="Says">One sentence that stands alone.</param>
public sealed record FormulaFault(FormulaProblem Problem, TextSpan At, string Says);

/// <summary>A value, or why there is none: exactly one of the two.</summary>
public readonly record struct Outcome<T>(T? Value, FormulaFault? Fault)
    where T : class
{
    public bool Ok => Fault is null;

    public static implicit operator Outcome<T>(T value) => new(value, null);

    public static implicit operator Outcome<T>(FormulaFault fault) => new(null, fault);
}
