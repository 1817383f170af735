using Witnessmark.Engineering.Fasteners;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Fasteners;

/// <summary>A bolt is larger or smaller than its strength class is standardised for.</summary>
public sealed class ClassOutsideSize : ISheetRule
{
    public static RuleInfo Info { get; } = new("class-outside-size", "Fasteners", Severity.Query);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var group in machine.Fasteners)
        {
            // both must be there, and the class known
            if (BoltStrength.Of(group) is not { Class: { } known } bolt || (group.PropertyClass ?? group.Grade) is not { } written)
                continue;
            // a thread that is no length is the reader's; a size in the table is as it should be
            if (bolt.Thread.Diameter.Unit.Kind != "length" || known.At(bolt.Thread.Diameter) is not null)
                continue;
            findings.Add(
                Info,
                written.At,
                $"{group.Id.Value} are {bolt.Thread} of {Sizes(bolt.Thread, bolt.Mark, known)}.",
                "Outside those sizes the standard promises no proof load, so the torque for these bolts cannot be proved.",
                "Read size and mark on the bolt again. If they are right, take the torque from the maker and name it under `basis`.",
                new FurtherPlace(group.Thread!.Value.At, $"{bolt.Thread}"));
        }
    }

    private static string Sizes(BoltThread thread, string mark, StrengthClass known) => thread is InchThread
        ? $"grade {mark}; SAE J429 has that grade from {known.Least} to {known.Most}"
        : $"class {mark}; ISO 898-1 has that class from M{known.Least.NumberText} to M{known.Most.NumberText}";
}
