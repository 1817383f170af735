using System.Collections.Frozen;

namespace Witnessmark.Comparing;

/// <summary>
/// Words that turn a sentence round: negations, sides, order, openings, how many, how strictly. A text in which one of them comes, goes or changes
/// its place is never mere wording; words of one sense (not, no, never, without) may stand for each other. In English and Spanish; common practice, no source.
/// </summary>
internal static class TellingWords
{
    private const string Negation = "not";

    /// <summary>First a line a sense, of words that may stand for each other; then words that stand for themselves.</summary>
    private static readonly FrozenDictionary<string, string> Senses = Lines(
        """
        not no never nor neither none nobody nothing without cannot don't doesn't mustn't nunca jamás sin nadie nada ni ningún ninguno ninguna tampoco
        unless except salvo excepto
        if when whenever si cuando
        until till hasta
        each every all cada todo toda todos todas
        left izquierda izquierdo
        right derecha derecho
        clockwise horario
        anticlockwise counterclockwise antihorario
        inside inward inwards dentro adentro
        outside outward outwards fuera afuera
        towards toward hacia
        back backward backwards
        open opened abierto abierta abrir
        close closed shut cerrado cerrada cerrar
        loose loosen flojo floja aflojar
        tight tighten apretado apretada apretar
        must shall debe deben
        should debería deberían
        may might puede pueden
        twice double doble
        only solo sólo solamente
        alone
        always siempre
        before antes
        after después
        first primero primera
        last último última
        next
        then luego
        again otra
        while mientras
        """,
        """
        off below above over under between behind beside opposite same reverse forward upper lower inner outer upward downward front rear top bottom near far away from
        sobre bajo encima debajo delante detrás entre junto opuesto mismo misma interior exterior superior inferior arriba abajo
        full empty hot cold wet dry oiled clean dirty any both either half third quarter two three four five six seven eight nine ten eleven twelve
        more less least most minimum maximum once
        lleno vacío caliente frío seco húmedo aceitado limpio sucio ambos ambas cualquiera mitad dos tres cuatro cinco seis siete ocho nueve diez once doce más menos mínimo máximo
        """);

    /// <summary>Words that tell a side only where nothing follows that they belong to: <c>faced side in</c>, and not <c>in the wind</c>.</summary>
    private static readonly FrozenSet<string> Sides = FrozenSet.ToFrozenSet(["in", "out", "on", "up", "down"], StringComparer.OrdinalIgnoreCase);

    /// <summary>Words that say nothing of what is negated.</summary>
    private static readonly FrozenSet<string> Light = FrozenSet.ToFrozenSet(["the", "one", "can", "any", "use", "are", "has", "los", "las", "del", "una", "que"], StringComparer.OrdinalIgnoreCase);

    /// <summary>Why a change of text is more than wording; null when it is no more.</summary>
    public static string? In(string old, string made)
    {
        var (before, after) = (TextWords.Of(old), TextWords.Of(made));
        var (tellingBefore, tellingAfter) = (Telling(before), Telling(after));
        if (Gone(tellingBefore, tellingAfter) is { } gone)
            return Says(gone, "is gone");
        if (Gone(tellingAfter, tellingBefore) is { } come)
            return Says(come, "has come");
        if (!tellingBefore.Select(w => w.Sense).SequenceEqual(tellingAfter.Select(w => w.Sense), StringComparer.Ordinal))
            return "telling words stand in another order";
        return Turned(before, after) ?? NegatedElsewhere(before, after);
    }

    /// <summary>Whether two texts are one but for the spelling of a word.</summary>
    public static bool OnlyRespelled(string old, string made)
    {
        var (before, after) = (TextWords.Of(old), TextWords.Of(made));
        return In(old, made) is null && before.Length == after.Length && before.Zip(after).All(p => TextWords.AreSpellings(p.First.Text, p.Second.Text));
    }

    // "open A, then B" and "open B, then A" have the same words
    private static string? Turned(TextWord[] old, TextWord[] made)
    {
        var (before, after) = (old.Select(w => w.Text.ToUpperInvariant()).ToList(), made.Select(w => w.Text.ToUpperInvariant()).ToList());
        return !before.SequenceEqual(after, StringComparer.Ordinal) && before.Order(StringComparer.Ordinal).SequenceEqual(after.Order(StringComparer.Ordinal), StringComparer.Ordinal)
            ? "the same words stand in another order"
            : null;
    }

    // "do not oil it, wipe it" and "oil it, do not wipe it" have one "not" each
    private static string? NegatedElsewhere(TextWord[] old, TextWord[] made)
    {
        var (before, after) = (Negated(old), Negated(made));
        var moved = before.Except(after, StringComparer.OrdinalIgnoreCase).Where(w => made.Any(m => Same(m, w)))
            .Concat(after.Except(before, StringComparer.OrdinalIgnoreCase).Where(w => old.Any(m => Same(m, w)))).FirstOrDefault();
        return moved is null ? null : $"\"not\" no longer stands before the same words: {moved}";
    }

    private static bool Same(TextWord word, string text) => word.Text.Equals(text, StringComparison.OrdinalIgnoreCase);

    /// <summary>Words of weight in the clause behind a negation.</summary>
    private static List<string> Negated(TextWord[] words)
    {
        const int window = 2;
        return [.. Enumerable.Range(0, words.Length).Where(i => SenseOf(words[i]) == Negation).SelectMany(i => Behind(words, i).Where(IsWeighty).Take(window))];
    }

    private static IEnumerable<string> Behind(TextWord[] words, int at)
    {
        for (var i = at + 1; i < words.Length && !words[i - 1].EndsClause; i++)
            yield return words[i].Text;
    }

    private static bool IsWeighty(string word) => word.Length > 2 && !Light.Contains(word);

    private static List<(string Text, string Sense)> Telling(TextWord[] words) => [.. words.Select(w => (w.Text, Sense: SenseOf(w)!)).Where(w => w.Sense is not null)];

    private static string? SenseOf(TextWord word) =>
        word.IsNumber || (Sides.Contains(word.Text) && word.StandsAlone) ? word.Text.ToUpperInvariant() : Senses.GetValueOrDefault(word.Text);

    private static string? Gone(List<(string Text, string Sense)> from, List<(string Text, string Sense)> here)
    {
        var left = here.GroupBy(w => w.Sense, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.Count(), StringComparer.Ordinal);
        return from.FirstOrDefault(w => left.GetValueOrDefault(w.Sense) is var n && (left[w.Sense] = n - 1) < 0).Text;
    }

    private static string Says(string word, string what) => char.IsDigit(word[^1]) || char.IsDigit(word[0]) ? $"the number {word} {what}" : $"the word \"{word}\" {what}";

    private static FrozenDictionary<string, string> Lines(string together, string alone)
    {
        var senses = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        foreach (var line in together.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
            foreach (var word in line.Split(' '))
                senses.TryAdd(word, line.Split(' ')[0]);
        foreach (var word in alone.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
            senses.TryAdd(word, word);
        return senses.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);
    }
}
