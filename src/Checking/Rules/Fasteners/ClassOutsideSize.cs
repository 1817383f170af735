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
            if (group.Thread is not { } thread || group.PropertyClass is not { } written || PropertyClasses.Find(written.Value) is not { } known)
                continue;
            // a thread that is no length is the reader's; a size in the table is as it should be
            if (thread.Value.Diameter.Unit.Kind != "length" || known.At(thread.Value.Diameter) is not null)
                continue;
            var (least, most) = (known.Rows[0].Sizes.Low!.Value.Value, known.Rows[^1].Sizes.High!.Value.Value);
            findings.Add(
                Info,
                written.At,
                $"{group.Id.Value} are {thread.Value} of class {written.Value}; ISO 898-1 has that class from M{least.NumberText} to M{most.NumberText}.",
                "Outside those sizes the standard promises no proof load, so the torque for these bolts cannot be proved.",
                "Read size and mark on the bolt again. If they are right, take the torque from the maker and name it under `basis`.",
                new FurtherPlace(thread.At, $"{thread.Value}"));
        }
    }
}
