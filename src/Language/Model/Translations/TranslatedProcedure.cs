using System.Collections.Immutable;

namespace Witnessmark.Language.Model;

/// <summary>A procedure with the words of its translation. Facts, numbers, hazards and signal words stay those of the original.</summary>
internal static class TranslatedProcedure
{
    /// <param name="words">Compared with the original before: where something is missing in it, the original stays.</param>
    public static Procedure Of(Procedure original, Translation words)
    {
        if (words.Body is not { } body)
            return original;
        var sections = new Queue<Section>(body.Sections);
        var parts = original.Parts.Select((part, i) => Part(part, body.Parts.ElementAtOrDefault(i), sections, body)).ToImmutableArray();
        return original with
        {
            Title = words.Title ?? original.Title,
            Heading = body.Heading ?? original.Heading,
            Introduction = body.Introduction.IsEmpty ? original.Introduction : body.Introduction,
            Parts = [.. parts.Select(p => p with { Sections = [.. p.Sections.Select(s => NamingSteps(s, original, body))] })],
        };
    }

    private static ProcedurePart Part(ProcedurePart part, ProcedurePart? words, Queue<Section> sections, TranslatedBody body) => part with
    {
        Prose = words is { Prose.IsEmpty: false } ? words.Prose : part.Prose,
        Sections = [.. part.Sections.Select(s => Section(s, sections.TryDequeue(out var own) ? own : null, body))],
    };

    private static Section Section(Section section, Section? words, TranslatedBody body) => section with
    {
        Heading = words?.Heading ?? section.Heading,
        Prose = words is { Prose.IsEmpty: false } ? words.Prose : section.Prose,
        Messages = Messages(section.Messages, words?.Messages ?? []),
        Steps = [.. section.Steps.Select(s => body.Step(s.Number) is { } own ? Step(s, own) : s)],
    };

    private static Step Step(Step step, Step words) => step with
    {
        Name = words.Name,
        Text = words.Text,
        Remarks = words.Remarks,
        Blocks = words.Blocks,
        Messages = Messages(step.Messages, words.Messages),
        Facts = [.. step.Facts.Select(f => f.Value is SpokenWords && words.Find(f.Word) is { } own ? f with { Text = own.Text, Value = own.Value } : f)],
    };

    private static ImmutableArray<SafetyMessage> Messages(ImmutableArray<SafetyMessage> messages, ImmutableArray<SafetyMessage> words) =>
        [.. messages.Select((m, i) => i < words.Length ? words[i] with { Word = m.Word, Signal = m.Signal, Hazard = m.Hazard } : m)];

    // a jump back names its step by the name that is printed there
    private static Section NamingSteps(Section section, Procedure original, TranslatedBody body) => section with
    {
        Steps = [.. section.Steps.Select(s => s with { Facts = [.. s.Facts.Select(f => NamingStep(f, original, body))] })],
    };

    private static Fact NamingStep(Fact fact, Procedure original, TranslatedBody body) =>
        fact.Value is AgainFrom again && original.Steps.FirstOrDefault(s => s.Slug == again.Step.Value) is { } named && body.Step(named.Number) is { } words
            ? fact with { Value = again with { Step = words.Name } }
            : fact;
}
