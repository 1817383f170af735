using Witnessmark.Language.Quantities;

namespace Witnessmark.Engineering;

/// <summary>To the nearest whole step, half away from zero: what a scale or a printed value can show.</summary>
public static class Graduation
{
    /// <summary>In the unit and with the decimals of <paramref name="step"/>; null when the step is not above zero or of another kind.</summary>
    public static Quantity? ToStep(Quantity value, Quantity step) => ToMark(value, step with { Number = 0 }, step);

    /// <summary>To the nearest of the marks <paramref name="first"/>, first + step, first + 2 steps …; marks go on below the first.</summary>
    internal static Quantity? ToMark(Quantity value, Quantity first, Quantity step)
    {
        if (step.Unit is not { Kind: var kind } || !Sensible.Positive(step, kind) || !Sensible.Is(value, kind) || !Sensible.Is(first, kind))
            return null;
        var start = first.In(step.Unit);
        var steps = Math.Round((value.In(step.Unit).Number - start.Number) / step.Number, MidpointRounding.AwayFromZero);
        var mark = new Quantity(start.Number + (steps * step.Number), step.Unit);
        return first.Unit == step.Unit ? mark.RoundedTo(Math.Max(first.Decimals, step.Decimals)) : mark;
    }
}
