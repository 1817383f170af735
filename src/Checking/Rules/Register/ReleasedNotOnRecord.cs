using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Register;

/// <summary>A procedure calls itself released and nobody has put that on record.</summary>
public sealed class ReleasedNotOnRecord : IProcedureRule
{
    public static RuleInfo Info { get; } = new("released-not-on-record", "Register", Severity.Query);

    public static void Check(Scope scope, FindingList findings)
    {
        var (procedure, register) = (scope.Procedure, scope.Library.Register);
        // not for work, or a workshop that keeps no register yet
        if (procedure is not { Status: { Value: ReleaseStatus.Released } status, Version: { } version } || register.Released.IsEmpty)
            return;
        // it is on record
        if (register.Find(procedure.Id.Value, version.Value) is not null)
            return;
        findings.Add(
            Info,
            status.At,
            $"{procedure.Id} {version} says that it is released; the register does not have it.",
            "No copy of it can be issued, and nobody can tell later what it said on the day it was released.",
            $"witnessmark release {procedure.Id} --by … puts it on record, or set `status: in-review`.");
    }
}
