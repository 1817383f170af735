using System.Collections.Frozen;
using Witnessmark.Language.Model;

namespace Witnessmark.Reading.Facts;

/// <summary>One right value for each fact, for "write it like this". A test reads every one.</summary>
public static class FactExamples
{
    private static readonly FrozenDictionary<FactWord, string> All = new Dictionary<FactWord, string>
    {
        [FactWord.StartsWith] = "guide-studs = placed",
        [FactWord.EndsWith] = "backing-ring-bolts = torqued",
        [FactWord.ForEach] = "pin in 1 to 6",
        [FactWord.Until] = "pedal-hold = passed",
        [FactWord.Odds] = "CL 35 % 20 min, CR 25 % 20 min",
        [FactWord.Owes] = "wheel-nut re-torque after 2 h, 10 h",
        [FactWord.By] = "mechanic, helper",
        [FactWord.Zone] = "brake-face",
        [FactWord.Tools] = "crane, sling-2leg",
        [FactWord.OnlyIf] = "plates = replace",
        [FactWord.Time] = "2 to 4 min",
        [FactWord.Remove] = "backing-ring-bolts 10 of 12",
        [FactWord.Fit] = "backing-ring, backing-ring-bolts 10 of 12",
        [FactWord.Loosen] = "backing-ring-bolts",
        [FactWord.Snug] = "backing-ring-bolts 10 of 12",
        [FactWord.Tighten] = "backing-ring-bolts",
        [FactWord.Place] = "G1, G2",
        [FactWord.Recover] = "G1, G2",
        [FactWord.Count] = "friction-disc = 9, steel-plate = 8",
        [FactWord.Drain] = "hub-oil",
        [FactWord.Fill] = "hub-oil",
        [FactWord.Measure] = "plate-thickness",
        [FactWord.Inspect] = "disc-faces",
        [FactWord.Test] = "brake-hold",
        [FactWord.WorkOut] = "running-clearance",
        [FactWord.Lift] = "backing-ring",
        [FactWord.Land] = "backing-ring on clean wood",
        [FactWord.Decide] = "plates",
        [FactWord.Outcome] = "replace when plate-thickness = replace or plate-faces = damaged",
        [FactWord.StopIf] = "running-clearance = outside",
        [FactWord.Requires] = "brake-stack = verified",
        [FactWord.Leaves] = "plate-order = marked",
        [FactWord.AgainFrom] = "put-the-shims-in, at most 2 times, then end shims-do-not-set (escalate)",
        [FactWord.End] = "scored-bore (escalate)",
        [FactWord.Perform] = "WB-60 group = backing-ring-bolts, wrench = TW-340",
        [FactWord.Tool] = "micrometer-25",
        [FactWord.Call] = "hands clear?",
        [FactWord.Answer] = "clear, standing at ___",
        [FactWord.Wait] = "5 min until the oil is clear",
        [FactWord.Was] = "snug-ten-bolts",
        [FactWord.CheckedBy] = "helper (independent)",
        [FactWord.Checks] = "tighten-the-ring-bolts",
        [FactWord.Hold] = "last reading ___ N·m",
        [FactWord.Original] = "3F9A",
        [FactWord.HandOver] = "mechanic, helper to mechanic, helper",
    }.ToFrozenDictionary();

    public static string Of(FactWord word) => All[word];
}
