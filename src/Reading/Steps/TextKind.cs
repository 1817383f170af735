using Witnessmark.Language.Model;

namespace Witnessmark.Reading.Steps;

/// <summary>What a Markdown text is read as: which facts may stand in it, and in which language its signal words are.</summary>
internal sealed record TextKind(FactPlace Heading, FactPlace Step, string Language)
{
    public static readonly TextKind Procedure = new(FactPlace.Heading, FactPlace.Step, SheetLanguages.English);

    public bool IsTranslation => Step == FactPlace.TranslatedStep;

    public static TextKind Translation(string language) => new(FactPlace.TranslatedHeading, FactPlace.TranslatedStep, language);
}
