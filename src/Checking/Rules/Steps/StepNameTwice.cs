using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Steps;

/// <summary>Two steps of one section have the same name.</summary>
public sealed class StepNameTwice : IProcedureRule
{
    public static RuleInfo Info { get; } = new("step-name-twice", "Steps", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var section in scope.Procedure.Parts.SelectMany(p => p.Sections))
            foreach (var alike in section.Steps.GroupBy(s => s.Slug, StringComparer.Ordinal))
                foreach (var step in alike.Skip(1))
                    Report(scope.Procedure, alike.First(), step, findings);
    }

    private static void Report(Procedure procedure, Step first, Step second, FindingList findings) =>
        findings.Add(
            Info,
            second.Name.At,
            $"{Say.Step(procedure, second)} has the same name as step {first.Number} of its section: “{second.Name.Value}”.",
            "A step is known by its section and its name. A sign-off, a jump back or the next version could mean either of the two.",
            "Say in the name what is different about the second one.",
            new FurtherPlace(first.Name.At, $"step {first.Number}"));
}
