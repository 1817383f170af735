using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Receiving;

/// <summary>The readings of a sign-off, row by row.</summary>
internal static class Readings
{
    public static IEnumerable<TypedRow> Rows(this Answer<ReadingAsk> answer)
    {
        if (answer.Ask.Pieces is [""])
            return answer.Value is DataMap ? [] : [TypedRow.Of("", answer.Value)];
        return answer.Value is DataMap map
            ? map.Entries.Where(e => answer.Ask.Pieces.Contains(e.Key.Value) && !Typed.IsEmpty(e.Value)).Select(e => TypedRow.Of(e.Key.Value, e.Value))
            : [];
    }

    /// <summary>The unit that the sheet asks for; null when the data sheet gives none.</summary>
    public static Unit? Unit(this ReadingAsk ask) => ask.Reading.Resolution?.Value.Unit ?? ask.Reading.Plausible?.Value.Unit;

    /// <summary>Rows that can be reckoned with: every number read, in the unit of the sheet.</summary>
    public static IEnumerable<TypedRow> Sound(this Answer<ReadingAsk> answer) =>
        answer.Rows().Where(r => r.Unclear is null && r.Numbers.Length > 0 && r.Unit is not null && r.Unit == answer.Ask.Unit());

    /// <summary><c>disc thickness of D3</c>, or the name alone.</summary>
    public static string Name(this Answer<ReadingAsk> answer, TypedRow row) => row.Piece.Length > 0 ? $"{DeclaredName.Spoken(answer.Ask.Key)} of {row.Piece}" : DeclaredName.Spoken(answer.Ask.Key);
}
