using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Register;

/// <summary>A copy came back, or was spoiled, that nobody issued.</summary>
public sealed class EndOfNoCopy : IRegisterRule
{
    public static RuleInfo Info { get; } = new("end-of-no-copy", "Register", Severity.Query);

    public static void Check(Library library, FindingList findings)
    {
        foreach (var mark in library.Register.Ended.GroupBy(e => e.Mark.Value, StringComparer.OrdinalIgnoreCase))
            foreach (var end in mark.Skip(library.Register.Copies.Count(c => string.Equals(c.Mark.Value, mark.Key, StringComparison.OrdinalIgnoreCase))))
                findings.Add(
                    Info,
                    end.Mark.At,
                    $"Copy {end.Mark} was {(end.End == CopyEnd.Returned ? "returned" : "spoiled")} on {end.Date}, and no such copy was out.",
                    "Either the mark is wrong, and the copy that was meant is still counted as out, or paper came back that nobody issued.",
                    "Compare with the mark in the corner of the paper. Perhaps the register of the clone that issued it was not merged yet.");
    }
}
