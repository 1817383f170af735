using System.Globalization;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Register;

/// <summary>A line of the register has no date that can be told.</summary>
public sealed class RegisterDateUnclear : IRegisterRule
{
    private const string Day = "yyyy-MM-dd";

    public static RuleInfo Info { get; } = new("register-date-unclear", "Register", Severity.Fault);

    public static void Check(Library library, FindingList findings)
    {
        var register = library.Register;
        Located<string>[] days = [.. register.Released.Select(r => r.Date), .. register.Withdrawn.Select(w => w.Date), .. register.Ended.Select(e => e.Date), .. register.Calibrated.Select(c => c.Due)];
        foreach (var day in days.Where(d => !IsDay(d.Value)))
            Add(findings, day, "2031-05-03");
        foreach (var time in register.Copies.Select(c => c.IssuedAt).Where(i => !IsTime(i.Value)))
            Add(findings, time, "2031-06-11T06:40:00+02:00");
    }

    private static bool IsDay(string text) => DateOnly.TryParseExact(text, Day, CultureInfo.InvariantCulture, DateTimeStyles.None, out _);

    private static bool IsTime(string text) => text.Length > Day.Length && text[Day.Length] == 'T'
        && DateTimeOffset.TryParse(text, CultureInfo.InvariantCulture, DateTimeStyles.None, out _);

    private static void Add(FindingList findings, Located<string> written, string example) => findings.Add(
        Info,
        written.At,
        $"`{Say.Short(written.Value)}` in the register is no date.",
        "Which version was in force on a day, and whether a copy was of it, is told by these dates alone.",
        $"Write it as the commands do: \"{example}\".");
}
