using Witnessmark.Language.Model;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Receiving;

/// <summary>Whether a step with an <c>only-if</c> was to be done, told from the choices and looks of the same sign-off.</summary>
internal static class Due
{
    /// <returns>Null when the sign-off does not tell.</returns>
    public static bool? Is(Held held, SheetEntry asked) => asked.Step.Guard is { } guard ? guard.Holds(c => Is(held, c)) : true;

    private static bool? Is(Held held, Clause clause) =>
        clause is StateClause state && Chosen(held, state.Thing.Value) is { } word ? state.HoldsAt(word) : null;

    private static string? Chosen(Held held, string name) =>
        held.Answers<ChoiceAsk>().Where(a => a.Ask.Key == name).Select(a => Typed.Text(a.Value)?.Value)
            .Concat(held.Answers<LookAsk>().Where(a => a.Ask.Key == name).Select(a => Typed.Text(a.Value)?.Value))
            .FirstOrDefault();
}
