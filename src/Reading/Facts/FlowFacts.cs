using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Reading.Facts;

/// <summary>for-each again-from end perform</summary>
internal static partial class FlowFacts
{
    /// <summary>Turns of one loop; a sheet with more would not be read.</summary>
    private const int MostTurns = 99;

    private const string KindOfEnd = " *\\((?<kind>done|stopped-safe|escalate)\\)";

    public static FactValue? Ending(FactText fact) =>
        End.Match(fact.Text.Value) is { Success: true } match ? Ending(fact.Text, match) : fact.Unclear();

    public static FactValue? Again(FactText fact)
    {
        var match = AgainThenEnd.Match(fact.Text.Value);
        if (!match.Success)
            return fact.Unclear();
        var atMost = int.Parse(match.Groups["n"].ValueSpan, CultureInfo.InvariantCulture);
        return new AgainFrom(fact.Text.Piece(match.Groups["step"]), atMost, Ending(fact.Text, match));
    }

    public static FactValue? Perform(FactText fact)
    {
        if (Version.Match(fact.Text.Value) is { Success: true } version)
            return fact.Unclear(fact.Text.Piece(version.Groups["at"]), $"`{fact.Text.Value}` names a version in a step.", "Versions are pinned once, in the front matter under `uses:`. Leave it out here.");
        var match = WhatIsPerformed.Match(fact.Text.Value);
        if (!match.Success)
            return fact.Unclear();
        var arguments = ImmutableArray.CreateBuilder<Argument>();
        if (fact.Text.PieceOrNull(match.Groups["given"]) is { } given)
            foreach (var piece in given.AtCommas())
            {
                var pair = NameIsValue.Match(piece.Value);
                if (!pair.Success)
                    return fact.Unclear(piece);
                arguments.Add(new Argument(piece.Piece(pair.Groups["name"]), piece.Piece(pair.Groups["value"]), piece.PieceOrNull(pair.Groups["place"])));
            }
        return new PerformValue(fact.Text.Piece(match.Groups["id"]), fact.Text.PieceOrNull(match.Groups["part"]), arguments.ToImmutable());
    }

    public static FactValue? Loop(FactText fact)
    {
        var match = Turns.Match(fact.Text.Value);
        if (!match.Success)
            return fact.Unclear();
        var kind = fact.Text.Piece(match.Groups["kind"]);
        if (match.Groups["group"].Success)
            return new Loop(kind, [], fact.Text.Piece(match.Groups["group"]));
        if (match.Groups["count"].Success)
            return Numbered(fact, kind, match);
        if (!match.Groups["list"].Success)
            return new Loop(kind, [], null);
        var turns = fact.Text.Piece(match.Groups["list"]).AtCommas();
        foreach (var turn in turns)
            if (!Spelling.OneName.IsMatch(turn.Value))
                return fact.Unclear(turn);
        return new Loop(kind, turns, null);
    }

    private static FactValue? Numbered(FactText fact, Located<string> kind, Match match)
    {
        var written = fact.Text.Piece(match.Groups["count"]);
        var from = int.Parse(match.Groups["from"].ValueSpan, CultureInfo.InvariantCulture);
        var to = int.Parse(match.Groups["to"].ValueSpan, CultureInfo.InvariantCulture);
        if (from > to || to - from >= MostTurns)
            return fact.Unclear(written, $"`{written.Value}` is not a run of numbers that can be worked through.", $"Count upward, at most {MostTurns} turns: `pin in 1 to 6`.");
        return new Loop(kind, [.. Enumerable.Range(from, to - from + 1).Select(n => written.As(n.ToString(CultureInfo.InvariantCulture)))], null);
    }

    private static EndingValue Ending(Located<string> text, Match match) => new(text.Piece(match.Groups["name"]), match.Groups["kind"].Value switch
    {
        "done" => EndingKind.Done,
        "stopped-safe" => EndingKind.StoppedSafe,
        _ => EndingKind.Escalate,
    });

    [GeneratedRegex("^(?<name>" + Spelling.Name + ")" + KindOfEnd + "$")]
    private static partial Regex End { get; }

    [GeneratedRegex("^(?<step>" + Spelling.Name + ") *, *at +most +(?<n>[0-9]{1,2}) +times? *, *then +end +(?<name>" + Spelling.Name + ")" + KindOfEnd + "$")]
    private static partial Regex AgainThenEnd { get; }

    [GeneratedRegex("^(?<id>" + Spelling.Name + ")(?: +part +(?<part>" + Spelling.Name + "))?(?: +(?<given>[^=]+=.+))?$")]
    private static partial Regex WhatIsPerformed { get; }

    [GeneratedRegex("^" + Spelling.Name + " +(?<at>(?:at +)?v?[0-9]+\\.[0-9]+(?:\\.[0-9]+)?)(?: |,|$)")]
    private static partial Regex Version { get; }

    [GeneratedRegex("^(?<name>" + Spelling.Name + ") *= *(?<value>" + Spelling.Name + ")(?: +at +(?<place>" + Spelling.Place + "))?$")]
    private static partial Regex NameIsValue { get; }

    [GeneratedRegex("^(?<kind>" + Spelling.Name + ")(?: +of +(?<group>" + Spelling.Name + ")| +in +(?:(?<count>(?<from>[0-9]{1,4}) +to +(?<to>[0-9]{1,4}))|(?<list>.+)))?$")]
    private static partial Regex Turns { get; }
}
