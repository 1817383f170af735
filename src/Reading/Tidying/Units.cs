using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Translations;

namespace Witnessmark.Reading.Tidying;

/// <summary>Units as shops spell them, in quantities only: what people read as words stays as it was written.</summary>
internal static class Units
{
    public static IEnumerable<Edit> Of(DataMap? data) =>
        // a translation has nothing but words
        data is null || data.Find(TranslationReader.Key) is not null ? [] : In(data);

    /// <summary>The edit that a written quantity needs, if it is one and needs any.</summary>
    public static IEnumerable<Edit> Of(Location at) =>
        QuantityReader.Tidied(at.Text) is { } tidied && tidied != at.Text ? [new Edit(Untidiness.Units, at.Span, tidied)] : [];

    private static IEnumerable<Edit> In(DataNode node) => node switch
    {
        DataMap map => map.Entries.Where(e => !ProseKeys.Has(e.Key.Value)).SelectMany(e => In(e.Value)),
        DataList list => list.Items.SelectMany(In),
        DataText text => Of(Unquoted(text)),
        _ => [],
    };

    /// <summary>Where the value itself stands; nothing where it is written in another way than it reads.</summary>
    private static Location Unquoted(DataText text)
    {
        var written = text.At.Text;
        if (written == text.Text)
            return text.At;
        return written.Length > 1 && written[1..^1] == text.Text ? text.At.Part(1, written.Length - 1) : text.At.Part(0, 0);
    }
}
