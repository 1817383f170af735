namespace Witnessmark.Records.Sheets;

/// <summary>Keys of an entry that are no declared names.</summary>
internal static class EntryKeys
{
    public const string By = "by";
    public const string At = "at";
    public const string CheckedBy = "checked-by";
    public const string Hold = "hold";
    public const string Passes = "passes";
    public const string Tool = "tool";

    /// <summary>The work ended at this step, and how.</summary>
    public const string End = "end";
    public const string Setting = "setting";

    /// <summary>Initials of a second person who looked at values that seemed copied.</summary>
    public const string LookedAgain = "looked-again";

    /// <summary>A guarded step that was not done, and why.</summary>
    public const string NotDone = "not-done";
}
