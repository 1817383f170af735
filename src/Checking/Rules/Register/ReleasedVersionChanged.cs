using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Records.Hashing;

namespace Witnessmark.Checking.Rules.Register;

/// <summary>A released version is no longer what was released.</summary>
public sealed class ReleasedVersionChanged : IProcedureRule
{
    public static RuleInfo Info { get; } = new("released-version-changed", "Register", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        var procedure = scope.Procedure;
        // nobody has released this number
        if (procedure.Version is not { } version || scope.Library.Register.Find(procedure.Id.Value, version.Value) is not { } released)
            return;
        var hash = ProcedureHash.Of(scope.Library, procedure);
        // it is what was released
        if (hash.IsBegunBy(released.Hash.Value))
            return;
        findings.Add(
            Info,
            version.At,
            $"{procedure.Id} {version} was released on {released.Date} with another hash: {ShortHash.Of(released.Hash.Value)} then, {hash.Short12} now.",
            "One number then stands for two texts. Copies of the old one are out with the same number at their foot, and nobody can tell from a record which one was worked from.",
            "Give it another version, and `status: in-review` until it is approved. If nothing should have changed, witnessmark compare tells what has, also in data sheets that it uses.",
            new FurtherPlace(released.Hash.At, "as it was released"));
    }
}
