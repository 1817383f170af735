using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Checking;

/// <summary>A translation beside what it translates, piece by piece.</summary>
public sealed record TranslatedFile(Translation Translation, Library Library) : Keeper
{
    private static readonly Once<TranslatedFile, ImmutableArray<PassagePair>> InFile = new(f => [.. Find(f)]);

    /// <summary>Null for data, and for what is not there.</summary>
    public Procedure? Procedure => Translation.Body is null ? null : Library.Procedure(Translation.Of.Value);

    /// <summary>What it translates, as data; null when nothing has that id.</summary>
    public DataNode? Original => Translation.Of.Value == Translation.WorkshopName
        ? Library.Workshop.Node
        : ((IItem?)Library.Procedure(Translation.Of.Value) ?? Library.Machines.Find(Translation.Of.Value) ?? (IItem?)Library.ToolLists.Find(Translation.Of.Value))?.Node;

    public string Language => SheetLanguages.Spoken(Translation.Language.Value);

    public bool IsSpanish => Translation.Language.Value == SheetLanguages.Spanish;

    /// <summary>Passages of the original that have their translation.</summary>
    public ImmutableArray<PassagePair> Pairs => InFile.Of(this);

    /// <summary>Translated to the end from the words that stand there today: every step has its own, every mark is right.</summary>
    public bool IsSettled => Procedure is { } procedure && Translation.Body is { } body
        && procedure.Steps.All(s => body.Step(s.Number) is not null) && body.Sections.Count() == procedure.Parts.Sum(p => p.Sections.Length)
        && Pairs.All(p => p.Mark?.Value == p.RightMark);

    /// <summary>Pairs whose words are still those that were translated. Of the others one thing is said: that they are to be read again.</summary>
    public IEnumerable<PassagePair> Settled => Pairs.Where(p => !p.IsStale);

    /// <summary>Steps of the original with the one that carries their number; those that have changed since are left out.</summary>
    public IEnumerable<(Step Original, Step Own)> SettledSteps => Steps.Where(s => !IsStale(Passages.WithMessages(s.Original), s.Own.Facts));

    /// <summary>Sections in order, those whose heading, text or messages have changed since left out.</summary>
    public IEnumerable<(Section Original, Section Own)> SettledSections =>
        Sections.Where(s => !IsStale(Passages.WithMessages(s.Original, s.Original.Heading?.At ?? Translation.Of.At), s.Own.Facts));

    private IEnumerable<(Step Original, Step Own)> Steps =>
        Procedure is { } procedure && Translation.Body is { } body
            ? procedure.Steps.Select(s => (s, Own: body.Step(s.Number))).Where(s => s.Own is not null).Select(s => (s.s, s.Own!))
            : [];

    /// <summary>Sections in order; none when one is missing, for then nobody knows which belong together.</summary>
    public IEnumerable<(Section Original, Section Own)> Sections
    {
        get
        {
            var sections = (Procedure?.Parts ?? []).SelectMany(p => p.Sections).ToList();
            var own = (Translation.Body?.Sections ?? []).ToList();
            return sections.Count == own.Count ? sections.Zip(own) : [];
        }
    }

    private static IEnumerable<PassagePair> Find(TranslatedFile file)
    {
        if (file.Procedure is not { } procedure || file.Translation is not { Body: { } body } translation)
            yield break;
        yield return new PassagePair(
            [Passages.Title(procedure.Title, procedure.Heading, procedure.Introduction, procedure.Id.At)],
            [Passages.Title(translation.Title, body.Heading, body.Introduction, body.Heading?.At ?? translation.Of.At)],
            Mark(body.UnderTitle), body.Heading?.At ?? translation.Of.At);
        foreach (var (part, own) in procedure.Parts.Zip(body.Parts).Where(p => p.First.Name is not null && !p.First.Prose.IsEmpty))
            yield return new PassagePair([Passages.Part(part, part.Name!.Value.At)], [Passages.Part(own, own.Name?.At ?? translation.Of.At)], Mark(own.Facts), own.Name?.At ?? translation.Of.At);
        foreach (var (section, own) in file.Sections.Where(s => s.Original is not { Heading: null, Prose.IsEmpty: true, Messages.IsEmpty: true }))
        {
            var at = own.Heading?.At ?? translation.Of.At;
            yield return new PassagePair([.. Passages.WithMessages(section, section.Heading?.At ?? procedure.Id.At)], [.. Passages.WithMessages(own, at)], Mark(own.Facts), at);
        }
        foreach (var (step, own) in file.Steps)
            yield return new PassagePair([.. Passages.WithMessages(step)], [.. Passages.WithMessages(own)], Mark(own.Facts), own.Name.At);
    }

    private static bool IsStale(IEnumerable<Passage> original, ImmutableArray<Fact> own) => Mark(own) is { } mark && mark.Value != Passage.MarkOf(original);

    private static Located<string>? Mark(ImmutableArray<Fact> facts) => facts.Find(FactWord.Original)?.Text;
}

/// <summary>A title, a section or a step with its messages, in both languages.</summary>
/// <param name="Mark">Of the words that were translated, as the translation names it; null when it names none.</param>
/// <param name="At">Where it stands in the translation.</param>
public sealed record PassagePair(ImmutableArray<Passage> Original, ImmutableArray<Passage> Own, Located<string>? Mark, Location At)
{
    /// <summary>The thing itself, behind its messages.</summary>
    public Passage Main => Original[^1];

    public bool IsStale => Mark is { } mark && mark.Value != RightMark;

    public string RightMark => Passage.MarkOf(Original);

    /// <summary>Message with message, step with step; empty when their number differs.</summary>
    public IEnumerable<(Passage Original, Passage Own)> Each => Original.Length == Own.Length ? Original.Zip(Own) : [];
}
