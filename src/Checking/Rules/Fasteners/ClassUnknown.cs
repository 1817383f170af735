using Witnessmark.Engineering.Fasteners;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Fasteners;

/// <summary>A strength class that no standard bolt has.</summary>
public sealed class ClassUnknown : ISheetRule
{
    public static RuleInfo Info { get; } = new("class-unknown", "Fasteners", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var group in machine.Fasteners)
        {
            // none written, or one that the standard has
            if (group.PropertyClass is not { } written || PropertyClasses.Find(written.Value) is not null)
                continue;
            var known = PropertyClasses.All.Select(c => c.Name).ToList();
            var meant = NearMiss.Of(written.Value, known);
            findings.Add(
                Info,
                written.At,
                $"{group.Id.Value} have class {written.Value}, which ISO 898-1 does not know.",
                "The class says how hard a bolt may be pulled. Without it the torque cannot be proved, and the next bolt is bought by guess.",
                meant is null
                    ? $"Read the mark on the head. Classes are {Say.And(known)}."
                    : $"Did you mean {meant}? Read the mark on the head; classes are {Say.And(known)}.");
        }
    }
}
