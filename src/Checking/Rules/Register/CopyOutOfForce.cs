using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Register;

/// <summary>A copy of a version that no longer holds is still out.</summary>
public sealed class CopyOutOfForce : IRegisterRule
{
    public static RuleInfo Info { get; } = new("copy-out-of-force", "Register", Severity.Query);

    public static void Check(Library library, FindingList findings)
    {
        var register = library.Register;
        foreach (var copy in register.Out)
        {
            // its version is not on record: copy-of-no-release
            if (register.Find(copy.Procedure.Value, copy.Version.Value) is null)
                continue;
            var inForce = register.InForce(copy.Procedure.Value);
            // it holds
            if (inForce?.Version.Value == copy.Version.Value)
                continue;
            findings.Add(
                Info,
                copy.Mark.At,
                $"Copy {copy.Mark} of {copy.Procedure} {copy.Version} is out{(copy.To is { } to ? $" with {to}" : "")}, and {(inForce is null ? "the version was withdrawn" : $"{inForce.Version} is in force")}.",
                "Somebody may be working from it now: with the torque, the count or the message that was changed for a reason.",
                $"Call it back: unit {copy.Unit}, {copy.Place}, issued {copy.IssuedAt} by {copy.By}. Then witnessmark spoiled {copy.Mark} --by …, or returned when the work was done.",
                [.. inForce is null ? Array.Empty<FurtherPlace>() : [new FurtherPlace(inForce.Version.At, "in force since then")]]);
        }
    }
}
