using System.Text;
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
        var names = new HashSet<Step>(new SameName());
        foreach (var section in scope.Procedure.Parts.SelectMany(p => p.Sections))
        {
            names.Clear();
            foreach (var step in section.Steps)
                if (!names.Add(step) && names.TryGetValue(step, out var first))
                    Report(scope.Procedure, first, step, findings);
        }
    }

    /// <summary>Letters and digits make the name, as in a slug. The slugs themselves are made only for names with the same ones.</summary>
    private sealed class SameName : IEqualityComparer<Step>
    {
        public bool Equals(Step? one, Step? other) => one?.Slug == other?.Slug;

        public int GetHashCode(Step step)
        {
            var hash = 0;
            foreach (var c in step.Name.Value.Normalize(NormalizationForm.FormC))
                if (char.IsLetterOrDigit(c))
                    hash = (hash * 31) + char.ToLowerInvariant(c);
            return hash;
        }
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
