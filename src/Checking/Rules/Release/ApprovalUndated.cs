using System.Globalization;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Release;

/// <summary>An approval has no date that can be read one way only.</summary>
public sealed class ApprovalUndated : IProcedureRule
{
    public static RuleInfo Info { get; } = new("approval-undated", "Release", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var approval in scope.Procedure.Approvals)
        {
            // a day of the calendar, year first
            if (approval.Date is { } date && DateOnly.TryParseExact(date.Value, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _))
                continue;
            var who = approval.By is { } by ? $"by {by.Value}" : approval.Role is { } role ? $"as {role.Value}" : "here";
            findings.Add(
                Info,
                approval.Date?.At ?? approval.At,
                approval.Date is { } odd ? $"The approval {who} has a date that cannot be read: “{odd.Value}”." : $"The approval {who} has no date.",
                "Years later somebody asks whether the sheet was approved before the machine went back to work. 03/04 is March to one and April to another.",
                "Write year, month, day, in quotes: `date: \"2031-05-02\"`.");
        }
    }
}
