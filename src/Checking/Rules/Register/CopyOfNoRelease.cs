using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Records.Hashing;

namespace Witnessmark.Checking.Rules.Register;

/// <summary>A copy was issued of what nobody released.</summary>
public sealed class CopyOfNoRelease : IRegisterRule
{
    public static RuleInfo Info { get; } = new("copy-of-no-release", "Register", Severity.Fault);

    public static void Check(Library library, FindingList findings)
    {
        foreach (var copy in library.Register.Copies)
        {
            var released = library.Register.Find(copy.Procedure.Value, copy.Version.Value);
            // released as it was printed
            if (released is not null && new ProcedureHash("", released.Hash.Value).IsBegunBy(copy.Hash.Value))
                continue;
            findings.Add(
                Info,
                copy.Version.At,
                released is null
                    ? $"Copy {copy.Mark} is of {copy.Procedure} {copy.Version}, which nobody released."
                    : $"Copy {copy.Mark} of {copy.Procedure} {copy.Version} has the hash {ShortHash.Of(copy.Hash.Value)}; released was {ShortHash.Of(released.Hash.Value)}.",
                "Paper is out that nobody has approved, or the line was written by hand.",
                $"Call copy {copy.Mark} back, and ask {copy.By} where it came from.");
        }
    }
}
