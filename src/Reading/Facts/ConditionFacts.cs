using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Witnessmark.Language.Model;

namespace Witnessmark.Reading.Facts;

/// <summary>starts-with ends-with until only-if requires stop-if leaves outcome</summary>
internal static partial class ConditionFacts
{
    public static FactValue? Condition(FactText fact) =>
        ConditionReader.Read(fact.Text, fact.Findings) is { } condition ? new ConditionValue(condition, null) : null;

    /// <summary>A condition, and behind a dash what to do then.</summary>
    public static FactValue? StopIf(FactText fact)
    {
        var dash = Dash.Match(fact.Text.Value);
        if (!dash.Success)
            return Condition(fact);
        var condition = ConditionReader.Read(fact.Text.Piece(0, dash.Index), fact.Findings);
        return condition is null ? null : new ConditionValue(condition, fact.Text.Piece(dash.Index + dash.Length, fact.Text.Value.Length));
    }

    public static FactValue? Left(FactText fact)
    {
        var states = ImmutableArray.CreateBuilder<StateClause>();
        foreach (var piece in fact.Text.AtCommas())
        {
            if (ClauseReader.State(piece.Value.Length == 0 ? fact.Text : piece, Spelling.LeftValue, fact.Findings) is not { } state)
                return null;
            if (state.Negated || state.Values.Length > 1)
                return fact.Unclear(piece, $"`{piece.Value}` leaves it open what the state is.", "Say the one value that the step leaves behind: `plate-order = marked`.");
            states.Add(state);
        }
        return new LeftState(states.ToImmutable());
    }

    public static FactValue? Outcome(FactText fact)
    {
        if (Otherwise.Match(fact.Text.Value) is { Success: true } otherwise)
            return new OutcomeValue(fact.Text.Piece(otherwise.Groups["name"]), []);
        var match = When.Match(fact.Text.Value);
        if (!match.Success)
            return fact.Unclear();
        return ConditionReader.Alternatives(fact.Text.Piece(match.Groups["when"]), fact.Findings) is { } alternatives
            ? new OutcomeValue(fact.Text.Piece(match.Groups["name"]), alternatives)
            : null;
    }

    [GeneratedRegex(" +[-–—] +")]
    private static partial Regex Dash { get; }

    [GeneratedRegex("^(?<name>" + Spelling.Name + ") +otherwise$")]
    private static partial Regex Otherwise { get; }

    [GeneratedRegex("^(?<name>" + Spelling.Name + ") +when +(?<when>.+)$")]
    private static partial Regex When { get; }
}
