using System.Collections.Immutable;

namespace Witnessmark.Language.Model;

/// <summary>A step with what holds around it.</summary>
/// <param name="MessagesInForce">Messages of the section and of this and earlier steps of the section, in the order printed.</param>
public sealed record StepInPlace(Procedure Procedure, ProcedurePart Part, Section Section, Step Step, ImmutableArray<SafetyMessage> MessagesInForce)
{
    /// <summary>The step's own fact, or the one of its section, or of its part: the nearest wins.</summary>
    public Fact? Effective(FactWord word) =>
        Step.Find(word) ?? Section.Facts.FirstOrDefault(f => f.Word == word) ?? Part.Facts.FirstOrDefault(f => f.Word == word);

    /// <summary>Roles that do the step.</summary>
    public ImmutableArray<string> Doers =>
        Effective(FactWord.By)?.Value is NameList by ? [.. by.Names.Select(n => n.Value)] : [];
}

public static class StepWalk
{
    /// <summary>All steps in the order printed.</summary>
    public static IEnumerable<StepInPlace> Walk(this Procedure procedure)
    {
        foreach (var part in procedure.Parts)
            foreach (var step in part.Walk(procedure))
                yield return step;
    }

    public static IEnumerable<StepInPlace> Walk(this ProcedurePart part, Procedure procedure)
    {
        foreach (var section in part.Sections)
        {
            var inForce = section.Messages;
            foreach (var step in section.Steps)
            {
                inForce = inForce.AddRange(step.Messages);
                yield return new StepInPlace(procedure, part, section, step, inForce);
            }
        }
    }
}
