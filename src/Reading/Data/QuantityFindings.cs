using Witnessmark.Language.Findings;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Faults;

namespace Witnessmark.Reading.Data;

/// <summary>What is wrong with a written quantity, in words.</summary>
public static class QuantityFindings
{
    private const string NotGuessed = "What cannot be read for certain is not guessed: somebody would set a wrench or a gauge by it.";
    private const string BareIsTwoThings = "Everyone reads a bare number in the unit that he is used to: a torque meant in N·m and set in lbf·ft breaks the bolt.";

    /// <param name="text">The quantity as written.</param>
    /// <param name="fault">What the reader of quantities says.</param>
    /// <param name="whose">Whose quantity, for the first sentence: <c>`torque` of wheel-nuts</c>.</param>
    /// <param name="example">A quantity as it should look.</param>
    public static Finding Of(Located<string> text, QuantityFault fault, string whose, string example)
    {
        var at = fault.At.Length > 0 ? text.Part(fault.At) : text.At;
        var bit = Shown.Short(fault.At.Length > 0 && fault.At.End <= text.Value.Length ? text.Value[fault.At.Start..fault.At.End] : text.Value);
        var all = Shown.Short(text.Value);
        var write = fault.Suggestion is { } s ? $"Did you mean `{s}`?" : $"Write it like this: `{example}`.";
        return fault.Problem switch
        {
            QuantityProblem.BareNumber => new(DataFaults.QuantityWithoutUnit, at, $"{whose} is `{all}`: there is no unit behind `{bit}`.", BareIsTwoThings, write),
            QuantityProblem.UnknownUnit => new(DataFaults.UnitUnknown, at, $"{whose} is `{all}`: `{bit}` is not a unit that is known here.", NotGuessed, write),
            QuantityProblem.DecimalComma => new(DataFaults.DecimalComma, at, $"{whose} is `{all}`: there is a comma in the number.", "In one country 4,500 is four and a half, in another four thousand five hundred.", fault.Suggestion is null ? "Write decimals with a point, thousands without any sign: 4.5 or 4500." : write),
            QuantityProblem.KindsDiffer => new(DataFaults.UnitWrongKind, at, $"{whose} is `{all}`: `{bit}` measures something else than the rest.", NotGuessed, $"Write both in one unit: `{example}`."),
            QuantityProblem.Backward => new(DataFaults.RangeBackward, at, $"{whose} is `{all}`: nothing lies between these two ends.", "No reading could ever pass, or all of them would.", write),
            QuantityProblem.TooLong => new(DataFaults.QuantityUnreadable, at, $"{whose} has more digits or words than any size on a machine.", NotGuessed, $"Write it like this: `{example}`."),
            QuantityProblem.LeftOver => new(DataFaults.QuantityUnreadable, at, $"{whose} is `{all}`: what `{bit}` means there is not known.", NotGuessed, fault.Suggestion is null ? $"Leave it out, or put it behind a # as a remark. Like this: `{example}`." : write),
            QuantityProblem.NoNumber => new(DataFaults.QuantityUnreadable, at, $"{whose} is `{all}`; a number and its unit belong there.", NotGuessed, write),
            _ => new(DataFaults.QuantityUnreadable, at, $"{whose} is `{all}`: `{bit}` can be read as one number or as two.", NotGuessed, write),
        };
    }

    /// <summary>A unit of another kind than the key asks for.</summary>
    /// <param name="kinds">What may stand there: torque, length …</param>
    public static Finding WrongKind(Located<string> text, Unit unit, string whose, IEnumerable<string> kinds, string example) => new(
        DataFaults.UnitWrongKind,
        text.At,
        $"{whose} is `{Shown.Short(text.Value)}`: {unit.Symbol} measures {unit.Kind}; {Shown.Or(kinds)} belongs there.",
        "A value in the wrong kind of unit is either a slip of the key or a slip of the unit, and only its author knows which.",
        $"Write it like this: `{example}`.");
}
