using Witnessmark.Language.Model;

namespace Witnessmark.Reading.References;

/// <summary>Holds the names and values in an interlock against what is declared. What cannot be read at all was said when it was read.</summary>
internal sealed class InterlockCheck(NameCheck names, ConditionCheck conditions)
{
    public void Check(Interlock interlock)
    {
        foreach (var condition in new[] { interlock.NeverWhen, interlock.OnlyWhen, interlock.Needed })
            if (condition is not null)
                conditions.Check(condition);
        foreach (var happening in interlock.BeforeAny.Concat(interlock.AfterAny))
            Check(happening);
        foreach (var thing in interlock.ProvedAgain)
            names.Must(thing, NameKind.HasState, "prove-again");
        if (interlock.EveryStep is StepsWhere where)
            Check(where.What);
        if (interlock.EveryStep is StepsThatChange changing)
            names.Must(changing.Thing, NameKind.HasState, "step that changes");
        foreach (var had in interlock.HasAll)
            if (had is { Thing: { } thing, Word: { } word } && Kinds(word) is { } kinds)
                names.Must(thing, kinds, word.Spelled());
    }

    public void Check(Happening happening)
    {
        if (happening is Becoming becoming)
            conditions.Check(new StateClause(becoming.Thing, becoming.AtPlace, false, [becoming.Value], becoming.At));
        if (happening is Testing testing)
            names.Must(testing.Test, NameKind.Test, "before test");
    }

    /// <summary>What the thing behind a word can be; null where it is no name.</summary>
    private static NameKind? Kinds(FactWord word) => word switch
    {
        FactWord.Place or FactWord.Recover => NameKind.Placed,
        FactWord.Remove or FactWord.Fit or FactWord.Loosen or FactWord.Snug or FactWord.Tighten => NameKind.Handled,
        FactWord.Count => NameKind.Counted,
        FactWord.Measure or FactWord.Inspect => NameKind.Reading,
        FactWord.Test => NameKind.Test,
        FactWord.WorkOut => NameKind.Value,
        FactWord.Lift or FactWord.Land => NameKind.Load,
        FactWord.Drain or FactWord.Fill => NameKind.Space,
        _ => null,
    };
}
