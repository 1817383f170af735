using System.Globalization;
using Scriban.Runtime;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Records.Hashing;
using Witnessmark.Rendering.Comparisons;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Site;

/// <summary>Everything that was ever released of a procedure, newest first: when it held, which copies went out, what it changed.</summary>
internal static class VersionPages
{
    public static IEnumerable<OutputFile> Render(SiteData data, PageFrame frame) => Ids(data.Library.Register).Select(id => Page(id, data, frame));

    /// <summary>Null where the register has no version of it.</summary>
    public static string? PathOf(string id, SiteData data) => data.Library.Register.History(id).IsEmpty ? null : $"versions/{SitePages.FileName(id)}.html";

    /// <summary>Procedures that the register has and the workshop has not: their copies may still be on a machine.</summary>
    public static IEnumerable<string> Gone(SiteData data) => Ids(data.Library.Register).Where(id => data.Library.Procedure(id) is null);

    /// <summary>Copies that nobody has brought back: <c>K77 of 2.1.0 (unit 14 CL)</c>.</summary>
    public static string Out(string id, Register register) =>
        string.Join(", ", register.Out.Where(c => c.Procedure.Value == id).Select(c => $"{c.Mark} of {c.Version} (unit {c.Unit} {c.Place}{CallBack(c, register)})"));

    // two ids that make one file name are one page's worth of trouble; the first has it
    private static IEnumerable<string> Ids(Register register) =>
        register.Released.Select(r => r.Procedure.Value).Distinct(StringComparer.Ordinal).DistinctBy(SitePages.FileName).Order(StringComparer.Ordinal);

    private static OutputFile Page(string id, SiteData data, PageFrame frame)
    {
        var register = data.Library.Register;
        var procedure = data.Library.Procedure(id);
        var times = TimeInForce.Of(register, id);
        var content = new ScriptObject
        {
            ["id"] = id,
            ["title"] = procedure?.Title?.Value ?? "",
            ["procedure"] = procedure is null ? "" : SitePages.PathOf(procedure),
            ["says"] = procedure is null ? $"{id} is not in the workshop any more." : Standing.Of(procedure, register, data.Hashes.GetValueOrDefault(id, "")).Says,
            ["times"] = new ScriptArray(times.Reverse().Select(t => new ScriptObject
            {
                ["from"] = t.From,
                ["until"] = t.Until is { } until ? DayBefore(until) : "",
                ["version"] = t.Version?.Version.Value ?? "",
            })),
            ["unreleased"] = Since(data.Versions.FirstOrDefault(s => s.Version is null && s.Before.Procedure.Value == id), procedure?.Version?.Value ?? "here"),
            ["versions"] = new ScriptArray(register.History(id).Reverse().Select(v => Version(v, times, data))),
        };
        return frame.Page($"versions/{SitePages.FileName(id)}.html", $"{id} versions", "versions.html", content);
    }

    private static ScriptObject Version(ReleasedVersion version, IEnumerable<TimeInForce> times, SiteData data)
    {
        var register = data.Library.Register;
        var withdrawn = register.Withdrawal(version);
        var held = times.Where(t => t.Version?.Version.Value == version.Version.Value).ToList();
        return new ScriptObject
        {
            ["version"] = version.Version.Value,
            ["word"] = withdrawn is not null ? "withdrawn" : register.InForce(version.Procedure.Value)?.Version.Value == version.Version.Value ? "in force" : "replaced",
            ["held"] = held.Count == 0 ? "It was in force on no whole day." : Say.Capital(Say.And(held.Select(Stretch))) + ".",
            ["withdrawn"] = withdrawn is null ? "" : $"Withdrawn on {withdrawn.Date} by {withdrawn.By}{(withdrawn.Why is { } why ? $": {why}" : ", no reason given")}.",
            ["date"] = version.Date.Value,
            ["by"] = version.By.Value,
            ["approved"] = version.Approvals.IsEmpty ? "nobody named" : string.Join(", ", version.Approvals.Select(a => a.Value)),
            ["short"] = ShortHash.Of(version.Hash.Value),
            ["hash"] = version.Hash.Value,
            ["copies"] = new ScriptArray(register.Copies.Where(c => c.Procedure.Value == version.Procedure.Value && c.Version.Value == version.Version.Value).Select(c => Copy(c, register))),
            ["changed"] = Since(data.Versions.FirstOrDefault(s => ReferenceEquals(s.Version, version)), version.Version.Value),
        };
    }

    private static ScriptObject? Since(VersionStep? step, string version) => step is null ? null : new ScriptObject
    {
        ["why"] = step.Why,
        ["table"] = step.Comparison is { } comparison ? ComparisonPage.Below($"What differs from {step.Before.Version} to {version}", comparison) : new RawHtml(""),
    };

    private static ScriptObject Copy(IssuedCopy copy, Register register) => new()
    {
        ["mark"] = copy.Mark.Value,
        ["unit"] = $"{copy.Unit} {copy.Place}",
        ["part"] = copy.Part?.Value ?? "",
        ["issued"] = copy.IssuedAt.Value.Length > 10 ? copy.IssuedAt.Value[..10] : copy.IssuedAt.Value,
        ["by"] = copy.By.Value,
        ["to"] = copy.To?.Value ?? "",
        ["end"] = register.End(copy) is { } end
            ? $"{(end.End == CopyEnd.Returned ? "returned" : "spoiled")} {end.Date}{(end.Why is { } why ? $": {why}" : "")}"
            : $"out{CallBack(copy, register)}",
    };

    private static string CallBack(IssuedCopy copy, Register register) => register.InForce(copy.Procedure.Value)?.Version.Value == copy.Version.Value ? "" : ", to call back";

    private static string Stretch(TimeInForce time) => time.Until is { } until ? $"in force from {time.From} to {DayBefore(until)}" : $"in force since {time.From}";

    /// <summary>Two versions do not both hold on the day of the change. What is no date is shown as written.</summary>
    private static string DayBefore(string day) => DateOnly.TryParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date) && date > DateOnly.MinValue
        ? date.AddDays(-1).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)
        : $"before {day}";
}
