using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Reading.Facts;
using Witnessmark.Reading.Faults;

namespace Witnessmark.Reading.References;

/// <summary>Holds the names and values in an interlock against what is declared. What cannot be read at all was said when it was read.</summary>
internal sealed partial class InterlockCheck(NameCheck names, ConditionCheck conditions)
{
    public void Check(Interlock interlock)
    {
        if (interlock.NeverWhen is { } never)
            conditions.Check(never);
        Condition(interlock.When);
        Condition(interlock.Requires);
        foreach (var change in Pieces(interlock.Before))
            Change(change);
        foreach (var happening in Pieces(interlock.After).Where(h => h.Value != "change of people" && !h.Value.StartsWith("stop above ", StringComparison.Ordinal)))
            Change(happening);
        foreach (var thing in Pieces(interlock.ProveAgain))
            names.Must(thing, NameKind.HasState, "prove-again");
        if (interlock.Every is { } every)
            Every(every);
    }

    private static ImmutableArray<Located<string>> Pieces(Located<string>? text) => text?.AtCommas() ?? [];

    private void Condition(Located<string>? text)
    {
        if (text is { } written && ConditionReader.Read(written, new FindingList()) is { } condition)
            conditions.Check(condition);
    }

    /// <summary><c>hub becomes fitted</c>, <c>test leak-check</c></summary>
    private void Change(Located<string> text)
    {
        if (Becomes.Match(text.Value) is { Success: true } match)
            Becoming(text, match);
        else if (Test.Match(text.Value) is { Success: true } test)
            names.Must(text.Piece(test.Groups["test"]), NameKind.Test, "before test");
        else
            names.Findings.Add(
                StepFaults.ConditionUnclear,
                text.At,
                $"`{Say.Short(text.Value)}` is not a change that can be waited for.",
                "A rule that waits for something else than a change is never asked, and protects nobody.",
                "Write `thing becomes value`, for example `backing-ring becomes fitted`, or `test leak-check`.");
    }

    /// <summary><c>step where engine becomes running</c>, <c>step that changes lock-pins</c>; other words are about verbs.</summary>
    private void Every(Located<string> text)
    {
        if (StepWhere.Match(text.Value) is { Success: true } where)
            Becoming(text, where);
        else if (StepThatChanges.Match(text.Value) is { Success: true } changes)
            names.Must(text.Piece(changes.Groups["thing"]), NameKind.HasState, "step that changes");
    }

    private void Becoming(Located<string> text, Match match) =>
        conditions.Check(new StateClause(text.Piece(match.Groups["thing"]), text.PieceOrNull(match.Groups["place"]), false, [text.Piece(match.Groups["value"])], text.At));

    private const string ThingBecomes = "(?<thing>" + Spelling.Name + ")(?: +at +(?<place>" + Spelling.Place + "))? +becomes +(?<value>" + Spelling.Name + ")$";

    [GeneratedRegex("^" + ThingBecomes)]
    private static partial Regex Becomes { get; }

    [GeneratedRegex("^step +where +" + ThingBecomes)]
    private static partial Regex StepWhere { get; }

    [GeneratedRegex("^step +that +changes +(?<thing>" + Spelling.Name + ")$")]
    private static partial Regex StepThatChanges { get; }

    [GeneratedRegex("^test +(?<test>" + Spelling.Name + ")$")]
    private static partial Regex Test { get; }
}
