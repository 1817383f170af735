using Scriban.Runtime;
using Witnessmark.Language.Model;
using Witnessmark.Records.Tags;
using Witnessmark.Rendering.Checklist;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Tags;

/// <summary>A card that lies on a heap of parts: what belongs there and by which number.</summary>
internal static class PileCards
{
    public static Cut Of(Pile pile, SheetContext context)
    {
        var words = context.Words;
        return new Cut(
            new ScriptObject
            {
                ["kind"] = pile.Keep is false ? "scrap" : "keep",
                ["word"] = Word(pile, context),
                ["what"] = $"{context.Tongue.Name(pile.Part.Id.Value)} {Marks(pile.Part)}".TrimEnd(),
                ["limits"] = new ScriptArray(pile.Bands.Select(b => context.Quantities.Of(b.Range.Value, words.Judge(pile.Reading.Judge?.Value), pile.Reading.JudgesDifference))),
                ["rule"] = Rule(pile, context),
                ["step"] = $"{context.Tongue.Name(pile.Reading.Id.Value)} · {words.AtStepNumber} {pile.Step.Code}",
            }.Showing("tag-pile.html"),
            Wide: false);
    }

    private static string Word(Pile pile, SheetContext context) =>
        pile.Outcome is { } outcome ? context.Tongue.Name(outcome.Name.Value) : pile.Keep is true ? context.Words.Keep : context.Words.Scrap;

    private static string Rule(Pile pile, SheetContext context) => pile.Outcome switch
    {
        { Otherwise: true } => context.Words.Otherwise,
        { } outcome => string.Join($" {context.Words.Or} ", outcome.When.Select(context.Conditions(pile.Step.Fills).Of)),
        null when pile.Keep is false => context.Tongue.Text(pile.Reading.Outside?.Value ?? ""),
        _ => "",
    };

    /// <summary><c>P1 – P8</c></summary>
    private static string Marks(PartKind part) =>
        part is { Mark: { } mark, Count: { Value: > 1 } count } ? $"{mark.Value}1 – {mark.Value}{count.Value}" : part.Mark?.Value ?? "";
}
