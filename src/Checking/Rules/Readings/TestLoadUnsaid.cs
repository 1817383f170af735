using Witnessmark.Language.Findings;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Readings;

/// <summary>A test at speed does not say how the machine is loaded.</summary>
public sealed class TestLoadUnsaid : IMeasuringRule
{
    public static RuleInfo Info { get; } = new("test-load-unsaid", "Readings", Severity.Fault);

    public static void Check(Measuring declared, FindingList findings)
    {
        foreach (var test in declared.Tests)
        {
            // not at speed, or said
            if (test.Speed is not { } speed || test.Load is not null)
                continue;
            findings.Add(
                Info,
                test.Id.At,
                $"{Say.Capital(test.Id.Value)} is made at {Measures.InBoth(speed.Value)} and does not say how the machine is loaded.",
                "An empty hauler stops far shorter than a full one. A test made empty and read as one made full passes brakes that do not hold.",
                "Write what it carries: `load: gross 61 400 kg`.",
                new FurtherPlace(speed.At, "made at this speed"));
        }
    }
}
