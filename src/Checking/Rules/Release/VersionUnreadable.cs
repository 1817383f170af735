using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Release;

/// <summary>The version is not three numbers.</summary>
public sealed class VersionUnreadable : IProcedureRule
{
    public static RuleInfo Info { get; } = new("version-unreadable", "Release", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        // none written: said by the reader
        if (scope.Procedure.Version is not { } version)
            return;
        // 2.1.0
        if (version.Value.Split('.') is { Length: 3 } numbers && numbers.All(IsNumber))
            return;
        findings.Add(
            Info,
            version.At,
            $"“{version.Value}” is no version: it takes three numbers, as in 2.1.0.",
            "Two sheets of one procedure are told apart by their versions. One that cannot be put in order cannot say which is newer.",
            "Write three numbers: the first for what changes a number, an order or a danger, the second for a method, the third for wording.");
    }

    private static bool IsNumber(string text) =>
        text.Length is > 0 and <= 6 && text.All(char.IsAsciiDigit) && (text.Length == 1 || text[0] != '0');
}
