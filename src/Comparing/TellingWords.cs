using System.Collections.Frozen;
using System.Text.RegularExpressions;

namespace Witnessmark.Comparing;

/// <summary>
/// Words that turn a sentence round: negations, sides, order, openings, numbers. A text in which one of them comes, goes or changes
/// its place is never mere wording. In English and Spanish; common practice, no source.
/// </summary>
internal static partial class TellingWords
{
    private static readonly FrozenSet<string> All = FrozenSet.ToFrozenSet(
        (
            "not no never nor neither none nobody nothing without unless except only if when while until till before after first last next then again once twice "
            + "left right clockwise anticlockwise counterclockwise inner outer inside outside inward outward in out on off up down upper lower above below over under "
            + "front rear top bottom near far toward towards away from between behind beside opposite same reverse forward backward "
            + "open close closed shut loose loosen tight tighten full empty hot cold wet dry oiled clean dirty "
            + "all every each any both either half one two three four five six seven eight nine ten eleven twelve "
            + "more less least most minimum maximum up to "
            + "no nunca ni sin salvo excepto solo sólo si cuando mientras hasta antes después primero último luego otra vez "
            + "izquierda derecha horario antihorario interior exterior dentro fuera adentro afuera arriba abajo sobre bajo encima debajo "
            + "delante detrás entre junto opuesto mismo abierto cerrado abrir cerrar flojo apretado aflojar apretar lleno vacío caliente frío seco húmedo aceitado limpio sucio "
            + "todo toda todos todas cada ambos ambas cualquiera medio uno una dos tres cuatro cinco seis siete ocho nueve diez once doce más menos mínimo máximo"
        ).Split(' '),
        StringComparer.OrdinalIgnoreCase);

    /// <summary>Why a change of text is more than wording; null when it is no more.</summary>
    public static string? In(string old, string made)
    {
        var (before, after) = (Telling(old), Telling(made));
        if (Gone(before, after) is { } gone)
            return Says(gone, "is gone");
        if (Gone(after, before) is { } come)
            return Says(come, "has come");
        return before.SequenceEqual(after, StringComparer.OrdinalIgnoreCase)
            ? TurnedAround(old, made)
            : "telling words stand in another order";
    }

    // "open A before B" and "open B before A" have the same words
    private static string? TurnedAround(string old, string made)
    {
        var (before, after) = (Words(old), Words(made));
        return Telling(old).Count > 0 && !before.SequenceEqual(after, StringComparer.OrdinalIgnoreCase)
            && before.Order(StringComparer.OrdinalIgnoreCase).SequenceEqual(after.Order(StringComparer.OrdinalIgnoreCase), StringComparer.OrdinalIgnoreCase)
            ? "the same words stand in another order"
            : null;
    }

    private static List<string> Telling(string text) => [.. Words(text).Where(w => All.Contains(w) || char.IsDigit(w[0]))];

    private static List<string> Words(string text) => [.. Word().Matches(text).Select(m => m.Value)];

    private static string? Gone(List<string> from, List<string> here)
    {
        var left = here.GroupBy(w => w, StringComparer.OrdinalIgnoreCase).ToDictionary(g => g.Key, g => g.Count(), StringComparer.OrdinalIgnoreCase);
        return from.FirstOrDefault(w => left.GetValueOrDefault(w) is var n && (left[w] = n - 1) < 0);
    }

    private static string Says(string word, string what) => char.IsDigit(word[0]) ? $"the number {word} {what}" : $"the word \"{word}\" {what}";

    // a number keeps its sign, its decimals and its unit's letters apart
    [GeneratedRegex(@"[-+±]?\d+(?:[.,]\d+)*|[\p{L}\p{M}'’]+")]
    private static partial Regex Word();
}
