using System.Collections.Immutable;
using Witnessmark.Engineering.Fasteners;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Fasteners;

/// <summary>A strength class or grade that no standard bolt has.</summary>
public sealed class ClassUnknown : ISheetRule
{
    public static RuleInfo Info { get; } = new("class-unknown", "Fasteners", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var group in machine.Fasteners)
        {
            // none written, or one that the standard has
            if (group.PropertyClass is { } written && PropertyClasses.Find(written.Value) is null)
                Add(group, written, "class", "ISO 898-1", PropertyClasses.All, findings);
            // the same for bolts in inches
            if (group.Grade is { } grade && InchGrades.Find(grade.Value) is null)
                Add(group, grade, "grade", "SAE J429", InchGrades.All, findings);
        }
    }

    private static void Add(FastenerGroup group, Located<string> written, string what, string standard, ImmutableArray<StrengthClass> all, FindingList findings)
    {
        var known = all.Select(c => c.Name).ToList();
        var list = $"{what switch { "class" => "classes", _ => "grades" }} are {Say.And(known)}.";
        findings.Add(
            Info,
            written.At,
            $"{group.Id.Value} have {what} {written.Value}, which {standard} does not know.",
            $"The {what} says how hard a bolt may be pulled. Without it the torque cannot be proved, and the next bolt is bought by guess.",
            NearMiss.Of(written.Value, known) is { } meant
                ? $"Did you mean {meant}? Read the mark on the head; {list}"
                : $"Read the mark on the head. {Say.Capital(list)}");
    }
}
