using System.Globalization;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Release;

/// <summary>The date of an approval cannot be read one way only.</summary>
public sealed class ApprovalDateUnclear : IProcedureRule
{
    public static RuleInfo Info { get; } = new("approval-date-unclear", "Release", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var approval in scope.Procedure.Approvals)
        {
            // none written: said by the reader
            if (approval.Date is not { } date)
                continue;
            // a day of the calendar, year first
            if (DateOnly.TryParseExact(date.Value, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _))
                continue;
            findings.Add(
                Info,
                date.At,
                $"The approval{(approval.By is { } by ? $" by {by.Value}" : "")} has a date that can be read in more than one way, or in none: “{date.Value}”.",
                "Years later somebody asks whether the sheet was approved before the machine went back to work. 03/04 is March to one and April to another.",
                "Write year, month, day, in quotes: `date: \"2031-05-02\"`.");
        }
    }
}
