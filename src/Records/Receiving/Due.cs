using Witnessmark.Language.Model;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Receiving;

/// <summary>Whether a step with an <c>only-if</c> was to be done, told from the choices and looks of the same sign-off.</summary>
internal static class Due
{
    /// <returns>Null when the sign-off does not tell.</returns>
    public static bool? Is(Held held, SheetEntry asked)
    {
        if (Endings.IsPast(held, asked))
            return false;
        var guards = asked.Step.Under.Concat(asked.Step.Guard is { } own ? [own] : []).Select(g => g.Holds(c => Is(held, c))).ToList();
        return guards.Contains(false) ? false : guards.Contains(null) ? null : true;
    }

    private static bool? Is(Held held, Clause clause) =>
        clause is StateClause state && Chosen(held, state.Thing.Value) is { } word ? state.HoldsAt(word) : null;

    private static string? Chosen(Held held, string name) =>
        Words(held.Answers<ChoiceAsk>(), name).Concat(Words(held.Answers<LookAsk>(), name)).FirstOrDefault();

    /// <summary>Of a loop the last turn: it is the one that ended it.</summary>
    private static IEnumerable<string?> Words<T>(IEnumerable<Answer<T>> answers, string name)
        where T : Ask =>
        from step in answers.Where(a => a.Ask.Key == name).GroupBy(a => a.Entry)
        select Typed.Text((step.First().Ask.Turns is null ? step.First() : step.Last()).Value)?.Value;
}
