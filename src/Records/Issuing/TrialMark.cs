namespace Witnessmark.Records.Issuing;

/// <summary>
/// Set mark of a trial sheet, which is wrong on purpose. It begins with a sign that no copy has, and that no hand turns into
/// one that a copy has: what was typed from such a sheet is known by it.
/// </summary>
public static class TrialMark
{
    public const char First = 'Z';

    /// <param name="language">Of the sheet: en.</param>
    public static string Of(string hash, string? part, string language) =>
        First + SetMark.Tail([hash, "trial", part ?? "", language]);

    /// <summary>Of the copy from which some pages of the trial sheet are: both signs behind the first are others.</summary>
    public static string Stray(string mark) => First + new string([.. mark[1..].Select(Next)]);

    public static bool IsOne(string typed) => typed.Length > 0 && char.ToUpperInvariant(typed[0]) == First;

    private static char Next(char sign) => SetMark.Alphabet[(SetMark.Alphabet.IndexOf(sign, StringComparison.Ordinal) + (SetMark.Alphabet.Length / 2)) % SetMark.Alphabet.Length];
}
