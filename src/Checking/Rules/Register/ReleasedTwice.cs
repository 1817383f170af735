using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Register;

/// <summary>One version stands in the register twice, with two hashes.</summary>
public sealed class ReleasedTwice : IRegisterRule
{
    public static RuleInfo Info { get; } = new("released-twice", "Register", Severity.Fault);

    public static void Check(Library library, FindingList findings)
    {
        foreach (var version in library.Register.Released.GroupBy(r => (r.Procedure.Value, r.Version.Value)))
            // two people who put the same text on record have said the same
            foreach (var again in version.Where(r => r.Hash.Value != version.First().Hash.Value))
                findings.Add(
                    Info,
                    again.Version.At,
                    $"{again.Procedure} {again.Version} was released by {again.By} with another hash than by {version.First().By}.",
                    "Two people have released two texts under one number, perhaps in two clones. Sheets of both carry the same number at their foot.",
                    "Find out which one is right; withdraw the number and release the right text under the next one. Neither line is taken out: both texts may be out on paper.",
                    new FurtherPlace(version.First().Version.At, "released here first"));
    }
}
