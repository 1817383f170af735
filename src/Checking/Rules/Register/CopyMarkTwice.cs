using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Register;

/// <summary>Two copies that are out have one mark.</summary>
public sealed class CopyMarkTwice : IRegisterRule
{
    public static RuleInfo Info { get; } = new("copy-mark-twice", "Register", Severity.Fault);

    public static void Check(Library library, FindingList findings)
    {
        foreach (var mark in library.Register.Out.GroupBy(c => c.Mark.Value, StringComparer.OrdinalIgnoreCase))
            foreach (var again in mark.Skip(1))
                findings.Add(
                    Info,
                    again.Mark.At,
                    $"Copy {again.Mark} is out twice: for unit {mark.First().Unit} {mark.First().Place} and for unit {again.Unit} {again.Place}.",
                    "The mark is what people compare when pages lie mixed on a tailgate. Two stacks of paper with one mark are one stack.",
                    "Call one of the two copies spoiled and issue it again; the new one gets another mark.",
                    new FurtherPlace(mark.First().Mark.At, "issued here first"));
    }
}
