using System.Globalization;
using Witnessmark.Comparing;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Changes;

/// <summary>The version moved on by less than what has changed.</summary>
public sealed class VersionStepShort : IChangeRule
{
    public static RuleInfo Info { get; } = new("version-step-short", "Changes", Severity.Fault);

    public static void Check(ChangedProcedure changed, FindingList findings)
    {
        // what nobody works from may change as it likes
        if (changed.Old.Procedure.Status?.Value != ReleaseStatus.Released || changed.Compared.Class <= ChangeClass.Layout)
            return;
        if (changed.Old.Procedure.Version is not { } from || changed.Procedure.Version is not { } to)
            return;
        var (old, made) = (Numbers(from.Value), Numbers(to.Value));
        var least = Least(old, changed.Compared.Class);
        // far enough
        if (Compare(made, least) >= 0)
            return;
        findings.Add(
            Info,
            to.At,
            $"{changed.Procedure.Id} goes from {from.Value} to {to.Value}, and {Says(changed.Compared.Class)}; that asks for {string.Join('.', least)} or more.",
            "A crew sees by the first number whether it has to read a sheet anew. A changed torque behind a small step is a torque that nobody looks for.",
            $"Write `version: {string.Join('.', least)}`. witnessmark compare tells what has changed.");
    }

    private static string Says(ChangeClass kind) => kind switch
    {
        ChangeClass.Hazard => "what has changed can hurt people",
        ChangeClass.Method => "the work goes otherwise",
        _ => "its words have changed",
    };

    private static int[] Least(int[] old, ChangeClass kind) => kind switch
    {
        ChangeClass.Hazard => [old[0] + 1, 0, 0],
        ChangeClass.Method => [old[0], old[1] + 1, 0],
        _ => [old[0], old[1], old[2] + 1],
    };

    private static int Compare(int[] a, int[] b)
    {
        for (var i = 0; i < a.Length; i++)
            if (a[i] != b[i])
                return a[i].CompareTo(b[i]);
        return 0;
    }

    // three numbers, or the reader would have said so; a number that no int holds is a fault of its own there
    private static int[] Numbers(string version) => [.. version.Split('.').Select(n => int.TryParse(n, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : 0)];
}
