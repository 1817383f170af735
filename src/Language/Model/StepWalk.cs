using System.Collections.Immutable;

namespace Witnessmark.Language.Model;

/// <summary>A step with what holds around it.</summary>
/// <param name="MessagesInForce">Messages of the section and of this and earlier steps of the section, in the order printed.</param>
public sealed record StepInPlace(Procedure Procedure, ProcedurePart Part, Section Section, Step Step, ImmutableArray<SafetyMessage> MessagesInForce)
{
    /// <summary>The step's own fact, or the one of its section, or of its part: the nearest wins.</summary>
    public Fact? Effective(FactWord word) => Step.Find(word) ?? Section.Facts.Find(word) ?? Part.Facts.Find(word);

    /// <summary>Roles that do the step.</summary>
    public ImmutableArray<string> Doers =>
        Effective(FactWord.By)?.Value is NameList by ? [.. by.Names.Select(n => n.Value)] : [];
}

/// <summary>A fact of a step, and the step in its place.</summary>
public readonly record struct StepFact(StepInPlace Place, Fact Fact)
{
    public Step Step => Place.Step;
}

public static class StepWalk
{
    private static readonly Once<Procedure, ImmutableArray<StepInPlace>> Walked = new(p => [.. p.Parts.SelectMany(part => part.Walk(p))]);

    private static readonly Once<Procedure, ImmutableArray<StepFact>> WithFacts = new(FactsOf);

    /// <summary>All steps in the order printed.</summary>
    public static ImmutableArray<StepInPlace> Walk(this Procedure procedure) => Walked.Of(procedure);

    /// <summary>All facts of all steps in the order printed; those under headings are not among them.</summary>
    public static ImmutableArray<StepFact> StepFacts(this Procedure procedure) => WithFacts.Of(procedure);

    private static ImmutableArray<StepFact> FactsOf(Procedure procedure)
    {
        var walk = procedure.Walk();
        var facts = ImmutableArray.CreateBuilder<StepFact>(walk.Sum(p => p.Step.Facts.Length));
        foreach (var place in walk)
            foreach (var fact in place.Step.Facts)
                facts.Add(new StepFact(place, fact));
        return facts.MoveToImmutable();
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
