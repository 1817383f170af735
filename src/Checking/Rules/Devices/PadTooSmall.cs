using Witnessmark.Checking.Wording;
using Witnessmark.Engineering;
using Witnessmark.Engineering.Lifting;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Devices;

/// <summary>The pad below a stand presses harder on the ground than the house lets this ground bear.</summary>
public sealed class PadTooSmall : ISheetRule
{
    public static RuleInfo Info { get; } = new("pad-too-small", "Devices", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        // nobody says what stands on a wheel end, or what ground bears
        if (machine.Masses.WheelEndStatic is not { } standing || library.Workshop.Limits.Ground is not { IsEmpty: false } ground)
            return;
        var load = StandLoad.Of(standing.Value, machine.Masses.LoadTransfer?.Value ?? 1);
        var weakest = ground.MinBy(g => g.Bears.Value.Si)!;
        foreach (var device in machine.Devices)
        {
            // no square pad
            if (device.Pad is not { } pad || device.Pad.Number("length") is not { } side || load?.PressureUnder(side) is not { } under)
                continue;
            // the ground bears it
            if (under.Value.CompareTo(weakest.Bears.Value) <= 0)
                continue;
            findings.Add(new Finding(
                Info,
                pad.At,
                $"{Say.Capital(device.Id.Value)} on a pad of {side} presses with {Measures.InBoth(under.Value.ToFigures(3))} on the ground; the house lets {weakest.Kind.Value} bear {weakest.Bears.Value}.",
                "The pad sinks, slowly or when somebody pulls on a bar, and the machine comes off the stand.",
                "Take a larger pad, or cribbing below it, and say so here. The ground itself is judged on the spot.")
            {
                Further = [new FurtherPlace(weakest.Bears.At, $"what {weakest.Kind.Value} bears")],
                Worked = [$"force on the stand: {load.Force.Line}", $"below the pad: {under.Line}"],
            });
        }
    }
}
