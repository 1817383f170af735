using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;

namespace Witnessmark.Reading.Facts;

/// <summary>time wait odds owes</summary>
internal static partial class TimeFacts
{
    private const string Time = "time";

    public static FactValue? Minutes(FactText fact) => Range(fact, fact.Text) is { } range ? new Duration(range, null) : null;

    public static FactValue? Waiting(FactText fact)
    {
        var until = Until.Match(fact.Text.Value);
        var time = until.Success ? fact.Text.Piece(0, until.Index) : fact.Text;
        if (Range(fact, time) is not { } range)
            return null;
        return new Duration(range, until.Success ? fact.Text.Piece(until.Index + until.Length, fact.Text.Value.Length) : null);
    }

    public static FactValue? Odds(FactText fact)
    {
        var odds = ImmutableArray.CreateBuilder<Odd>();
        foreach (var piece in fact.Text.AtCommas())
        {
            var match = NameChanceMinutes.Match(piece.Value);
            if (!match.Success)
                return fact.Unclear(piece);
            if (One(fact, piece.Piece(match.Groups["chance"]), "share") is not { } chance
                || One(fact, piece.Piece(match.Groups["minutes"]), Time) is not { } minutes)
                return null;
            odds.Add(new Odd(piece.Piece(match.Groups["name"]), chance, minutes));
        }
        return new OddsValue(odds.ToImmutable());
    }

    public static FactValue? Debt(FactText fact)
    {
        var match = WhatAfter.Match(fact.Text.Value);
        if (!match.Success)
            return fact.Unclear();
        var times = ImmutableArray.CreateBuilder<Located<Quantity>>();
        foreach (var piece in fact.Text.Piece(match.Groups["times"]).AtCommas())
        {
            if (One(fact, piece, Time) is not { } time)
                return null;
            times.Add(piece.As(time));
        }
        return new DebtValue(fact.Text.Piece(match.Groups["what"]), times.ToImmutable());
    }

    private static QuantityRange? Range(FactText fact, Located<string> text) =>
        Checked(fact, text, QuantityReader.Range(text.Value), r => r.Unit, Time);

    private static Quantity? One(FactText fact, Located<string> text, string kind) =>
        Checked(fact, text, QuantityReader.Quantity(text.Value), q => q.Unit, kind);

    private static T? Checked<T>(FactText fact, Located<string> text, Parsed<T> parsed, Func<T, Unit> unitOf, string kind)
        where T : struct
    {
        if (parsed.Fault is null && unitOf(parsed.Value).Kind == kind)
            return parsed.Value;
        var whose = $"`{fact.Row.Spelling}`";
        var example = FactExamples.Of(fact.Row.Word);
        fact.Findings.Add(parsed.Fault is { } fault
            ? QuantityFindings.Of(text, fault, whose, example)
            : QuantityFindings.WrongKind(text, unitOf(parsed.Value), whose, [kind], example));
        return null;
    }

    [GeneratedRegex(" +until +")]
    private static partial Regex Until { get; }

    [GeneratedRegex("^(?<name>" + Spelling.Name + ") +(?<chance>[0-9][^ ]* *%) +(?<minutes>[0-9].*)$")]
    private static partial Regex NameChanceMinutes { get; }

    [GeneratedRegex("^(?<what>.+?) +after +(?<times>.+)$")]
    private static partial Regex WhatAfter { get; }
}
