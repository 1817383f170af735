using System.Text.RegularExpressions;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Reading.Facts;

/// <summary>Reads one clause of a condition.</summary>
internal static class ClauseReader
{
    public static Clause? Read(Located<string> text, FindingList findings)
    {
        if (text.Value is "safe stop" or "end of step")
            return new MomentClause(text.Value, text.At);
        if (Spelling.PeopleIn.Match(text.Value) is { Success: true } people)
            return new PeopleClause(text.Piece(people.Groups["zone"]), text.At);
        if (Spelling.Devices.Match(text.Value) is { Success: true } devices)
            return new DevicesClause(devices.Groups["reach"].Value == "every", text.PieceOrNull(devices.Groups["blocks"]), text.Piece(devices.Groups["value"]), text.At);
        if (Spelling.OneName.IsMatch(text.Value))
            return new BundleClause(text);
        return State(text, Spelling.StateValue, findings);
    }

    /// <param name="value">How a value may look here.</param>
    public static StateClause? State(Located<string> text, Regex value, FindingList findings)
    {
        var sign = Spelling.Sign.Match(text.Value);
        if (!sign.Success || Spelling.Sign.IsMatch(text.Value, sign.Index + sign.Length))
            return Unclear(text, findings);
        var values = text.Piece(sign.Index + sign.Length, text.Value.Length).Split(Spelling.Or);
        var left = text.Piece(0, sign.Index);
        var thing = Spelling.ThingAtPlace.Match(left.Value);
        if (!thing.Success || !values.All(v => value.IsMatch(v.Value)))
            return Unclear(text, findings);
        var negated = sign.Value.Contains("not", StringComparison.Ordinal);
        return new StateClause(left.Piece(thing.Groups["thing"]), left.PieceOrNull(thing.Groups["place"]), negated, values, text.At);
    }

    private static StateClause? Unclear(Located<string> text, FindingList findings)
    {
        findings.Add(UnclearConditions.Of(text));
        return null;
    }
}
