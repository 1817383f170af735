using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Fasteners;

/// <summary>An inch bolt with a metric class, or a metric bolt with an inch grade.</summary>
public sealed class MarkOfOtherThread : ISheetRule
{
    public static RuleInfo Info { get; } = new("mark-of-other-thread", "Fasteners", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var group in machine.Fasteners)
        {
            // nothing to hold a mark against
            if (group.Thread is not { } thread)
                continue;
            var inch = thread.Value is InchThread;
            // the mark that goes with the thread, or none
            if ((inch ? group.PropertyClass : group.Grade) is not { } mark)
                continue;
            findings.Add(
                Info,
                mark.At,
                inch
                    ? $"{group.Id.Value} are {thread.Value}, bolts in inches, and have the metric class {mark.Value}."
                    : $"{group.Id.Value} are {thread.Value}, metric bolts, and have the inch grade {mark.Value}.",
                "Grade 8 and class 8.8 sound alike and are not: on the same bolt grade 8 bears a third more. Bought by the wrong mark, it is pulled past what it bears, or the torque is too small to hold.",
                inch
                    ? "Read the head: strokes are a grade, three of them grade 5, six grade 8. Write `grade: \"5\"` and the like, and take the class out."
                    : "Read the head: numbers with a stop are a class. Write `class: \"10.9\"` and the like, and take the grade out.",
                new FurtherPlace(thread.At, $"{thread.Value}"));
        }
    }
}
