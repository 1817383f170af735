using System.Collections.Immutable;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Reading.Facts;

/// <summary>
/// Reads a condition, spelled the same way everywhere: <c>thing [at place] = value [or value]</c>, a comma is <em>and</em>.
/// </summary>
public static class ConditionReader
{
    /// <summary>The condition, or null when a clause could not be read; then <paramref name="findings"/> says which and why.</summary>
    public static Condition? Read(Located<string> text, FindingList findings)
    {
        var pieces = text.AtCommas();
        var clauses = ImmutableArray.CreateBuilder<Clause>(pieces.Length);
        foreach (var piece in pieces)
            if (ClauseReader.Read(piece.Value.Length == 0 ? piece with { At = text.At } : piece, findings) is { } clause)
                clauses.Add(clause);
        return clauses.Count == pieces.Length ? new Condition(clauses.MoveToImmutable(), text.At) : null;
    }

    /// <summary>
    /// The alternatives of an outcome: <c>plates = warped or worn or faces = damaged</c> are two, since a value stays with
    /// its thing and only a new thing begins a new condition. Null when one could not be read.
    /// </summary>
    public static ImmutableArray<Condition>? Alternatives(Located<string> text, FindingList findings)
    {
        var conditions = ImmutableArray.CreateBuilder<Condition>();
        var pieces = AlternativeTexts(text).ToList();
        foreach (var piece in pieces)
            if (Read(piece, findings) is { } condition)
                conditions.Add(condition);
        return conditions.Count == pieces.Count ? conditions.ToImmutable() : null;
    }

    private static IEnumerable<Located<string>> AlternativeTexts(Located<string> text)
    {
        var start = 0;
        foreach (var or in Spelling.Or.Matches(text.Value).Select(m => (m.Index, End: m.Index + m.Length)))
        {
            var before = text.Value[start..or.Index];
            var after = text.Value[or.End..];
            if (or.Index < start || (HasSign(LastClause(before)) && !HasSign(FirstClause(after))))
                continue;
            yield return text.Piece(start, or.Index).Trimmed();
            start = or.End;
        }
        yield return text.Piece(start, text.Value.Length).Trimmed();
    }

    private static bool HasSign(string text) => Spelling.Sign.IsMatch(text);

    private static string LastClause(string text) => text[(text.LastIndexOf(',') + 1)..];

    private static string FirstClause(string text)
    {
        var comma = text.IndexOf(',', StringComparison.Ordinal);
        var or = Spelling.Or.Match(text);
        var end = or.Success ? or.Index : text.Length;
        return text[..(comma >= 0 && comma < end ? comma : end)];
    }
}
