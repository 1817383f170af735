using Witnessmark.Engineering.Stacks;
using Witnessmark.Engineering.Tightening;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Engineering;

/// <summary>The arithmetic behind a sheet's numbers, line by line, by the same functions that the rules use.</summary>
public sealed class WorkedLines(Workshop workshop)
{
    public IEnumerable<(string Label, string Line)> Of(FastenerGroup group)
    {
        if (TorqueWindow.For(group, workshop.Limits) is not { } window)
            yield break;
        yield return (window.Thread is InchThread ? "stress area (ASME B1.1)" : "stress area (ISO 898-1)", window.StressArea.Line);
        yield return ("proof load", window.ProofLoad.Line);
        yield return ("preload aimed at", window.Preload.Line);
        yield return ("torque for it, T = K·d·F", window.Target.Line);
        yield return ("torque at proof load", window.TProof.Line);
        yield return ("house window, low", window.Low.Line);
        yield return ("house window, high", window.High.Line);
        if (group.Torque is { } torque && PreloadScatter.Of(window, torque.Value, workshop.Limits) is { } scatter)
        {
            yield return ("preload after scatter", scatter.RootSumSquare.Line);
            yield return ("worst case", scatter.WorstCase.Line);
        }
    }

    public IEnumerable<(string Label, string Line)> Of(PartStack stack, Machine machine)
    {
        if (StackHeight.Of(stack, machine.Parts.Find) is { } height)
        {
            yield return ("height of the new stack", height.Height.Line);
            yield return ("running clearance", height.Clearance.Line);
            yield return ("its tolerance, likely", height.RootSumSquare.Line);
            yield return ("its tolerance, worst case", height.WorstCase.Line);
        }
        if (stack.Clearance is { } clearance)
            yield return ("clearance accepted", Measures.InBoth(clearance.Value));
        if (WearTravel.Of(stack, machine.Parts.Find) is { } wear)
        {
            yield return ("travel with all parts at their limit", wear.Travel.Line);
            yield return ("travel allowed, overrun less margin", wear.Allowed.Line);
        }
    }
}
