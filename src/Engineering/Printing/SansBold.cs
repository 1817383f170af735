using System.Collections.Frozen;

namespace Witnessmark.Engineering.Printing;

/// <summary>
/// How wide words are in the bold type of sheets and figures, and how many lines they take. Advance widths in 1/1000 em of Liberation Sans Bold
/// 1.07.4 (SIL Open Font License), read once from its tables cmap and hmtx, and the same as Arial Bold's. Held against a browser's own
/// measure in tests/Browser.Tests.
/// </summary>
public static class SansBold
{
    /// <summary>For a letter that the table does not have: as wide as the type is high.</summary>
    private const int Unknown = 1000;

    private static readonly (int Width, string Letters)[] Table =
    [
        (238, "'"),
        (278, " ,./I\\ijl\u00A0·ÌÍÎÏìíîï‘’"),
        (280, "|¦"),
        (333, "!()-:;[]`ft¡¨²³´¸¹"),
        (365, "º"),
        (370, "ª"),
        (389, "*r{}"),
        (400, "°"),
        (474, "\""),
        (500, "z“”"),
        (549, "±÷"),
        (552, "¯"),
        (556, "#$0123456789J_aceksvxy¢£¤¥§«¶»àáâãäåçèéêëýÿ–€"),
        (576, "µ"),
        (584, "+<=>^~¬×−"),
        (611, "?FLTZbdghnopqu¿ßðñòóôõöøùúûüþ"),
        (667, "EPSVXYÈÉÊËÝÞ"),
        (722, "&ABCDHKNRUÀÁÂÃÄÅÇÐÑÙÚÛÜ"),
        (737, "©®"),
        (778, "GOQwÒÓÔÕÖØ"),
        (802, "Ω"),
        (833, "M"),
        (834, "¼½¾"),
        (889, "%mæ"),
        (944, "Wœ"),
        (975, "@"),
        (1000, "Æ—…Œ"),
    ];

    private static readonly FrozenDictionary<char, int> Widths =
        Table.SelectMany(row => row.Letters, (row, letter) => KeyValuePair.Create(letter, row.Width)).ToFrozenDictionary();

    /// <summary>Millimetres, on one line.</summary>
    public static double Width(ReadOnlySpan<char> text, Measure size) => Width(text, size.Millimetres);

    /// <param name="size">Of the type, in millimetres.</param>
    public static double Width(ReadOnlySpan<char> text, double size)
    {
        var thousandths = 0;
        foreach (var letter in text)
            thousandths += Widths.GetValueOrDefault(letter, Unknown);
        return thousandths / 1000.0 * size;
    }

    /// <summary>Lines that the text takes in a column, broken at spaces as browsers do; a word wider than the column takes a line of its own.</summary>
    public static int Lines(ReadOnlySpan<char> text, Measure size, double column)
    {
        var (lines, used) = (1, 0.0);
        var space = Width(" ", size);
        foreach (var piece in text.Split(' '))
        {
            if (text[piece] is not { IsEmpty: false } word)
                continue;
            var width = Width(word, size);
            if (used > 0 && used + space + width > column)
                (lines, used) = (lines + 1, width);
            else
                used += (used > 0 ? space : 0) + width;
        }
        return lines;
    }
}
