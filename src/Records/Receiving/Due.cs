using Witnessmark.Language.Model;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Receiving;

/// <summary>Whether a step with an <c>only-if</c> was to be done, told from the choices and looks of the same sign-off.</summary>
internal static class Due
{
    /// <returns>Null when the sign-off does not tell.</returns>
    public static bool? Is(Held held, SheetEntry asked)
    {
        if (IsBehindTheEnd(held, asked))
            return false;
        var guards = asked.Step.Under.Concat(asked.Step.Guard is { } own ? [own] : []).Select(g => g.Holds(c => Is(held, c))).ToList();
        return guards.Contains(false) ? false : guards.Contains(null) ? null : true;
    }

    /// <summary>Where the work ended: the first step whose ending was struck. Null when it went through.</summary>
    public static HeldEntry? Ending(Held held) => held.Entries
        .Where(e => !e.NotDone && e.Asked.Find(EntryKeys.End) is not null && !Typed.IsEmpty(e.Entry.Find(EntryKeys.End)))
        .MinBy(e => held.Asked.IndexOf(e.Asked));

    private static bool IsBehindTheEnd(Held held, SheetEntry asked) =>
        Ending(held) is { } end && held.Asked.IndexOf(asked) is var at && at > held.Asked.IndexOf(end.Asked) && asked.Step.Code.Number > end.Asked.Step.Code.Number;

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
