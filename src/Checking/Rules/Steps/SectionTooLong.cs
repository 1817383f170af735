using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Steps;

/// <summary>A section has more steps than the house allows.</summary>
public sealed class SectionTooLong : IProcedureRule
{
    public static RuleInfo Info { get; } = new("section-too-long", "Steps", Severity.Query);

    public static void Check(Scope scope, FindingList findings)
    {
        var limit = scope.Library.Workshop.Limits.StepsInSection;
        foreach (var section in scope.Procedure.Parts.SelectMany(p => p.Sections))
        {
            // within the limit of the house
            if (section.Steps.Length <= limit)
                continue;
            var over = section.Steps[limit];
            findings.Add(
                Info,
                section.Heading?.At ?? section.Steps[0].Name.At,
                $"{Name(scope.Procedure, section)} has {Say.Count(section.Steps.Length, "step")}; the house limit is {limit}.",
                "People keep their place in a short list. In a long one a step is lost after every call from outside, and nobody sees the gap.",
                $"Begin a new section at or before step {over.Number}, where the place on the machine or the thing in hand changes.",
                new FurtherPlace(over.Name.At, $"the first step over the limit: {over.Name.Value}"));
        }
    }

    private static string Name(Procedure procedure, Section section) =>
        section.Heading is { } heading ? $"Section “{heading.Value}” of {procedure.Id.Value}" : $"The first section of {procedure.Id.Value}";
}
