using Witnessmark.Language.Model;
using Witnessmark.Reading.Data;

namespace Witnessmark.Reading.Sheets;

/// <summary>Limits of the house. What is left out stays as common practice has it.</summary>
internal static class LimitsReader
{
    public static HouseLimits Read(Fields sheet)
    {
        var own = HouseLimits.Default;
        if (sheet.Below("limits", "limits", "{crane-use: 75 %}") is not { } limits)
            return own;
        own = own with
        {
            WrenchShare = limits.Shares("wrench-share", "20 to 100 %") ?? own.WrenchShare,
            TorqueWindow = limits.Shares("torque-window", "65 to 85 %") ?? own.TorqueWindow,
            TightenedProof = limits.Share("tightened-proof", "95 %")?.Value ?? own.TightenedProof,
            FrictionScatter = limits.Share("friction-scatter", "25 %")?.Value ?? own.FrictionScatter,
            WrenchScatter = limits.Share("wrench-scatter", "4 %")?.Value ?? own.WrenchScatter,
            DualUnits = limits.Share("dual-units", "2 %")?.Value ?? own.DualUnits,
            LiftByHand = limits.Quantity("lift-by-hand", "23 kg", "mass")?.Value ?? own.LiftByHand,
            CraneUse = limits.Share("crane-use", "75 %")?.Value ?? own.CraneUse,
            SlingAngle = limits.Quantity("sling-angle", "45 deg", "angle")?.Value ?? own.SlingAngle,
            ContainerFill = limits.Share("container-fill", "80 %")?.Value ?? own.ContainerFill,
            StepWords = limits.Count("step-words", "25")?.Value ?? own.StepWords,
            StepsInSection = limits.Count("steps-in-section", "9")?.Value ?? own.StepsInSection,
            Shift = limits.Quantity("shift", "10 h", "time")?.Value ?? own.Shift,
        };
        NotYetUsed(limits);
        limits.Done();
        return own;
    }

    /// <summary>Limits that no rule works with yet: read, so that a slip is found.</summary>
    private static void NotYetUsed(Fields limits)
    {
        limits.Number("estimated-mass-factor", "1.25");
        limits.Number("blank-safety", "1.5");
        limits.Shares("gauge-share", "25 to 75 %");
        limits.Quantity("used-oil-self-haul", "208 L", "volume");
        limits.Quantity("oil-balance", "0.5 L", "volume");
        limits.Quantity("interruption", "15 min", "time");
        limits.Range("hand-over", "20 to 30 min", "time");
        if (limits.Below("ground", "limits of the ground", "{compacted gravel: 150 kPa}") is { } ground)
            foreach (var kind in ground.Map.Entries)
                ground.Quantity(kind.Key.Value, "150 kPa", "pressure");
    }
}
