using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Reading.Data;
using Witnessmark.Reading.Shapes;

namespace Witnessmark.Reading.Sheets;

/// <summary>Limits of the house. What is left out stays as common practice has it.</summary>
internal static class LimitsReader
{
    private static readonly Shape Ground = new("ground-limits", "limits of the ground")
    {
        Other = Row.Quantity("compacted gravel", "150 kPa", "what this ground bears", "pressure"),
    };

    private static readonly Shape Shape = new(
        "limits",
        "limits",
        Row.Shares("wrench-share", "20 to 100 %", "part of a wrench's greatest value that it is trusted for"),
        Row.Shares("torque-window", "65 to 85 %", "share of the torque at proof load that a torque lies in"),
        Row.Share("tightened-proof", "95 %", "greatest preload after scatter, as a share of the proof load"),
        Row.Share("friction-scatter", "25 %", "how far friction moves the clamp load"),
        Row.Share("wrench-scatter", "4 %", "how far a wrench may be off"),
        Row.Share("dual-units", "2 %", "how far two units of one value may differ"),
        Row.Quantity("lift-by-hand", "23 kg", "the most that one person lifts", "mass"),
        Row.Share("crane-use", "75 %", "the most of a crane's capacity that is used"),
        Row.Quantity("sling-angle", "45 deg", "the least angle of a leg to the horizontal", "angle"),
        Row.Share("container-fill", "80 %", "how full a container may be"),
        Row.Count("step-words", "25", "the most words of a step"),
        Row.Count("steps-in-section", "9", "the most steps of a section"),
        Row.Quantity("shift", "10 h", "how long people work at a stretch", "time"),
        Row.Factor("estimated-mass-factor", "1.25", "by what a mass that nobody weighed counts more"),
        Row.Factor("blank-safety", "1.5", "yield over stress of a blank, at the pressure that it must hold"),
        Row.Shares("gauge-share", "25 to 75 %", "part of a gauge's scale that is read"),
        Row.Quantity("used-oil-self-haul", "208 L", "used oil that a truck may carry", "volume"),
        Row.Quantity("oil-balance", "0.5 L", "how far oil drained and oil filled may differ", "volume"),
        Row.Quantity("interruption", "15 min", "after a longer stop, what was proved is proved again", "time"),
        Row.Range("hand-over", "20 to 30 min", "how long a hand-over takes", "time"),
        Row.Below("ground", Ground, "{compacted gravel: 150 kPa}", "what kinds of ground bear"));

    public static readonly Row Section = Row.Below("limits", Shape, "{crane-use: 75 %}", "limits of the house; what is left out stays as common practice has it");

    public static HouseLimits Read(Fields sheet)
    {
        var own = HouseLimits.Default;
        if (sheet.Below(Section.Key) is not { } limits)
            return own;
        return own with
        {
            WrenchShare = limits.Shares("wrench-share") ?? own.WrenchShare,
            TorqueWindow = limits.Shares("torque-window") ?? own.TorqueWindow,
            TightenedProof = limits.Share("tightened-proof")?.Value ?? own.TightenedProof,
            FrictionScatter = limits.Share("friction-scatter")?.Value ?? own.FrictionScatter,
            WrenchScatter = limits.Share("wrench-scatter")?.Value ?? own.WrenchScatter,
            DualUnits = limits.Share("dual-units")?.Value ?? own.DualUnits,
            LiftByHand = limits.Quantity("lift-by-hand")?.Value ?? own.LiftByHand,
            CraneUse = limits.Share("crane-use")?.Value ?? own.CraneUse,
            SlingAngle = limits.Quantity("sling-angle")?.Value ?? own.SlingAngle,
            EstimatedMass = limits.Factor("estimated-mass-factor")?.Value ?? own.EstimatedMass,
            BlankSafety = limits.Factor("blank-safety")?.Value ?? own.BlankSafety,
            Ground = Bearings(limits),
            ContainerFill = limits.Share("container-fill")?.Value ?? own.ContainerFill,
            StepWords = limits.Count("step-words")?.Value ?? own.StepWords,
            StepsInSection = limits.Count("steps-in-section")?.Value ?? own.StepsInSection,
            Shift = limits.Quantity("shift")?.Value ?? own.Shift,
        };
    }

    private static ImmutableArray<GroundBearing> Bearings(Fields limits)
    {
        if (limits.Below("ground") is not { } ground)
            return [];
        var bearings = ImmutableArray.CreateBuilder<GroundBearing>();
        foreach (var entry in ground.Map.Entries)
            if (ground.Quantity(entry.Key.Value) is { } bears)
                bearings.Add(new GroundBearing(entry.Key, bears));
        return bearings.ToImmutable();
    }
}
