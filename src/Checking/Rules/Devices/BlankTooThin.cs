using Witnessmark.Checking.Wording;
using Witnessmark.Engineering;
using Witnessmark.Engineering.Plates;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Devices;

/// <summary>A blanking plate bends too much under the pressure that it holds against.</summary>
public sealed class BlankTooThin : ISheetRule
{
    public static RuleInfo Info { get; } = new("blank-too-thin", "Devices", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        var safety = library.Workshop.Limits.BlankSafety;
        foreach (var device in machine.Devices)
        {
            // no plate: caps and plugs hold by their rating
            if (device is not { Thickness: { } thickness, Radius: { } radius } || device.Material.Number("pressure", "yield") is not { } yield)
                continue;
            // nothing said that it holds against
            if ((device.Against.Number("pressure") ?? device.Rated?.Value) is not { Unit.Kind: "pressure" } pressure)
                continue;
            // it holds, or its numbers are none of a thin plate
            if (PlateStress.Of(pressure, radius.Value, thickness.Value, yield, safety) is not { Holds: false } plate)
                continue;
            findings.Add(new Finding(
                Info,
                thickness.At,
                $"{Say.Capital(device.Id.Value)} of {thickness.Value} is bent to {Measures.InBoth(plate.Stress.Value.ToFigures(3))} at {pressure}; its material may have {Measures.InBoth(plate.Allowed.Value.ToFigures(3))}.",
                "A plate that yields bulges and lifts at its bolts. Hot oil then comes out of a line that everybody takes for shut.",
                "Take a thicker plate, or a stronger material, and say so here.")
            {
                Further = device.Against is { } against ? [new FurtherPlace(against.At, "what it holds against")] : [],
                Worked = [$"bending stress, thin round plate: {plate.Stress.Line}", $"allowed, yield / {Say.Number(safety)}: {plate.Allowed.Line}"],
            });
        }
    }
}
