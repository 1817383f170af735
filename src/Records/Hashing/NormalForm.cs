using System.Text;

namespace Witnessmark.Records.Hashing;

/// <summary>
/// Text as it is hashed: normal form C, every run of blanks one blank, none at the ends.
/// </summary>
public static class NormalForm
{
    private const string TwoCodes = "u\u0308";
    private const string OneCode = "\u00FC";

    /// <summary>
    /// Whether normalising does anything. It does nothing where .NET runs in invariant globalization mode: the same text
    /// typed on two machines would then hash differently, so nothing may be hashed there.
    /// </summary>
    public static bool Works { get; } = WorksWith(t => t.Normalize(NormalizationForm.FormC));

    public static bool WorksWith(Func<string, string> normalize) => normalize(TwoCodes) == OneCode;

    public static string Of(string text)
    {
        var folded = new StringBuilder(text.Length);
        foreach (var c in text.Normalize(NormalizationForm.FormC))
        {
            // white space of every kind, no-break and narrow blanks too
            if (!char.IsWhiteSpace(c))
                folded.Append(c);
            else if (folded.Length > 0 && folded[^1] != ' ')
                folded.Append(' ');
        }
        return folded.ToString().TrimEnd(' ');
    }
}
