using System.Globalization;
using Witnessmark.Engineering.Printing;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Steps;

/// <summary>The bold name of a step takes more lines beside its boxes than a glance takes in.</summary>
public sealed class StepNameTooWide : IProcedureRule
{
    internal const int MostLines = 2;

    public static RuleInfo Info { get; } = new("step-name-too-wide", "Steps", Severity.Query);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var step in scope.Procedure.Steps)
        {
            // a name is seen at once
            if (Lines(step, step.NameWithStop) is var (lines, column) && lines <= MostLines)
                continue;
            findings.Add(
                Info,
                step.Name.At,
                string.Create(CultureInfo.InvariantCulture, $"{Say.Step(scope.Procedure, step)} has a name that takes {lines} lines on the sheet; two are the most in the {column:0} mm that it has."),
                "The name is what is read with a glance between two grips. One of three lines is begun and not ended, and its last words are the ones that are missed.",
                "Keep the verb and the thing in the bold name, and put the rest behind it in plain type.");
        }
    }

    /// <summary>Lines that a name of the step takes, and the width that it has.</summary>
    internal static (int Lines, double Column) Lines(Step step, string name)
    {
        var column = AsksBesideWords(step) ? StepColumn.BesideBoxes : StepColumn.Free;
        return (SansBold.Lines(name, SheetMeasures.Body, column), column);
    }

    // counts, readings with their instrument, looks, decisions, tags: each has a box or a cell at the right of the words
    private static bool AsksBesideWords(Step step) => step.Facts.Any(f => f.Word
        is FactWord.Count or FactWord.Place or FactWord.Recover or FactWord.Measure or FactWord.Inspect or FactWord.Test
        or FactWord.Tool or FactWord.Decide or FactWord.OnlyIf);
}
