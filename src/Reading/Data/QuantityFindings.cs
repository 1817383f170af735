using Witnessmark.Language.Findings;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Reading.Faults;

namespace Witnessmark.Reading.Data;

/// <summary>What is wrong with a written quantity, in words.</summary>
internal static class QuantityFindings
{
    private const string NotGuessed = "What cannot be read for certain is not guessed: somebody would set a wrench or a gauge by it.";

    /// <param name="text">The quantity as written.</param>
    /// <param name="fault">What the reader of quantities says.</param>
    /// <param name="whose">Whose quantity, for the first sentence: <c>`torque` of wheel-nuts</c>.</param>
    /// <param name="example">A quantity as it should look.</param>
    public static Finding Of(Located<string> text, QuantityFault fault, string whose, string example)
    {
        var bit = fault.At.Length > 0 && fault.At.End <= text.Value.Length ? text.Value[fault.At.Start..fault.At.End] : text.Value;
        var like = $"Write it like this: `{example}`.";
        return new Finding(
            RuleOf(fault.Problem),
            fault.At.Length > 0 ? text.Part(fault.At) : text.At,
            fault.Problem == QuantityProblem.TooLong
                ? $"{whose} has more digits or words than any size on a machine."
                : $"{whose} is `{Say.Short(text.Value)}`{Found(fault.Problem, Say.Short(bit))}.",
            Why(fault.Problem),
            fault.Suggestion is { } meant ? $"Did you mean `{meant}`?" : Hint(fault.Problem) + like)
        {
            Correction = fault is { Problem: QuantityProblem.DecimalComma, Suggestion: { } point } ? WithPoint(text, point) : null,
        };
    }

    /// <summary>The reader of quantities suggests a point only where the comma can be nothing else.</summary>
    private static Correction? WithPoint(Located<string> text, string point) =>
        text.At.Text == text.Value ? Correction.Of(text.At, point, $"`{Say.Short(text.Value)}` becomes `{Say.Short(point)}`.") : null;

    /// <summary>A unit of another kind than the key asks for.</summary>
    /// <param name="text">The quantity as written.</param>
    /// <param name="unit">Its unit.</param>
    /// <param name="whose">Whose quantity, for the first sentence.</param>
    /// <param name="kinds">What may stand there: torque, length …</param>
    /// <param name="example">A quantity as it should look.</param>
    public static Finding WrongKind(Located<string> text, Unit unit, string whose, IEnumerable<string> kinds, string example) => new(
        DataFaults.UnitWrongKind,
        text.At,
        $"{whose} is `{Say.Short(text.Value)}`: {unit.Symbol} measures {unit.Kind}; {Say.Or(kinds)} belongs there.",
        "A value in the wrong kind of unit is either a slip of the key or a slip of the unit, and only its author knows which.",
        $"Write it like this: `{example}`.");

    private static RuleInfo RuleOf(QuantityProblem problem) => problem switch
    {
        QuantityProblem.BareNumber => DataFaults.QuantityWithoutUnit,
        QuantityProblem.UnknownUnit => DataFaults.UnitUnknown,
        QuantityProblem.DecimalComma => DataFaults.DecimalComma,
        QuantityProblem.KindsDiffer => DataFaults.UnitWrongKind,
        QuantityProblem.Backward => DataFaults.RangeBackward,
        _ => DataFaults.QuantityUnreadable,
    };

    private static string Found(QuantityProblem problem, string bit) => problem switch
    {
        QuantityProblem.BareNumber => $": there is no unit behind `{bit}`",
        QuantityProblem.UnknownUnit => $": `{bit}` is not a unit that is known here",
        QuantityProblem.DecimalComma => ": there is a comma in the number",
        QuantityProblem.KindsDiffer => $": `{bit}` does not go with the unit of the rest",
        QuantityProblem.Backward => ": nothing lies between these two ends",
        QuantityProblem.LeftOver => $": what `{bit}` means there is not known",
        QuantityProblem.SplitNumber => $": `{bit}` can be read as one number or as two",
        _ => "; a number and its unit belong there",
    };

    private static string Why(QuantityProblem problem) => problem switch
    {
        QuantityProblem.BareNumber =>
            "Everyone reads a bare number in the unit that he is used to: a torque meant in N·m and set in lbf·ft breaks the bolt.",
        QuantityProblem.DecimalComma => "In one country 4,500 is four and a half, in another four thousand five hundred.",
        QuantityProblem.Backward => "No reading could ever pass, or all of them would.",
        _ => NotGuessed,
    };

    private static string Hint(QuantityProblem problem) => problem switch
    {
        QuantityProblem.DecimalComma => "Decimals have a point, thousands no sign at all. ",
        QuantityProblem.LeftOver => "Leave it out, or put it behind a # as a remark. ",
        QuantityProblem.KindsDiffer => "Both belong in one unit. ",
        _ => "",
    };
}
