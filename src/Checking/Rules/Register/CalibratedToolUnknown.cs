using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Register;

/// <summary>A date of calibration stands behind a tool that is on no list.</summary>
public sealed class CalibratedToolUnknown : IRegisterRule
{
    public static RuleInfo Info { get; } = new("calibrated-tool-unknown", "Register", Severity.Query);

    public static void Check(Library library, FindingList findings)
    {
        foreach (var calibrated in library.Register.Calibrated)
        {
            // on a list
            if (library.ToolLists.Any(l => l.Find(calibrated.Tool.Value) is not null))
                continue;
            var near = NearMiss.Of(calibrated.Tool.Value, library.ToolLists.SelectMany(l => l.Names));
            findings.Add(
                Info,
                calibrated.Tool.At,
                $"{calibrated.Tool} {calibrated.Number} is calibrated until {calibrated.Due}, and no tool list has {calibrated.Tool}.",
                "The date is told of nothing: the wrench that was meant looks as if nobody had ever calibrated it.",
                near is null ? "Write the name as the tool list has it, or put the tool on the list." : $"Did you mean `{near}`? Otherwise put the tool on the list.");
        }
    }
}
