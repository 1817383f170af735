using System.Globalization;
using Witnessmark.Comparing;

namespace Witnessmark.Rendering.Comparisons;

/// <summary>Changes in words, the same in every form of the report.</summary>
internal static class ChangeWords
{
    public static string Of(ChangeClass kind) => kind switch
    {
        ChangeClass.Hazard => "hazard",
        ChangeClass.Method => "method",
        ChangeClass.Wording => "wording",
        ChangeClass.Layout => "layout",
        _ => "none",
    };

    public static string Of(Sense sense) => sense switch
    {
        Sense.Looser => "looser",
        Sense.Tighter => "tighter",
        _ => "",
    };

    /// <summary><c>+4.3 %, looser</c>; empty where neither is known.</summary>
    public static string Mark(Change change) => string.Join(", ", new[] { Share(change.Share), Of(change.Sense) }.Where(t => t.Length > 0));

    /// <summary><c>2.1.0 to 2.2.0</c></summary>
    public static string Versions(ProcedureComparison procedure) => (procedure.Old, procedure.New) switch
    {
        (null, { } made) => $"{made.Version}, new",
        ({ } old, null) => $"{old.Version}, gone",
        ({ } old, { } made) when old.Version == made.Version => $"{made.Version}, same version",
        var (old, made) => $"{old!.Version} to {made!.Version}",
    };

    /// <summary>Changes since the release that are not told already.</summary>
    public static IEnumerable<Change> Further(ProcedureComparison procedure) =>
        procedure.SinceRelease?.Changes.Where(c => !procedure.Changes.Any(told => (told.Where, told.What, told.Old, told.New) == (c.Where, c.What, c.Old, c.New))) ?? [];

    private static string Share(decimal? share) => share is { } s && s != 0
        ? string.Create(CultureInfo.InvariantCulture, $"{(s > 0 ? "+" : "−")}{Math.Abs(s) * 100:0.#} %")
        : "";
}
