using System.Collections.Immutable;
using Witnessmark.Checking.Wording;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;

namespace Witnessmark.Checking.Rules.Messages;

/// <summary>A number stands in a message and nowhere else.</summary>
public sealed class NumberOnlyInMessage : IProcedureRule
{
    public static RuleInfo Info { get; } = new("number-only-in-message", "Messages", Severity.Fault);

    private static readonly Once<WorkshopFile, ImmutableArray<FoundQuantity>> InData = new(f => [.. Texts(f.Node).SelectMany(t => QuantitiesInText.Find(t))]);

    private static readonly Once<Procedure, ImmutableArray<FoundQuantity>> InSteps = new(Said);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var message in scope.Procedure.Messages())
            WrittenTexts.Read(message, text => Check(text, scope, findings));
    }

    private static void Check(WrittenText text, Scope scope, FindingList findings)
    {
        foreach (var number in QuantitiesInText.Find(text.Text))
        {
            // torque-in-prose says it
            if (number.Quantity.Unit.Kind == "torque")
                continue;
            // a limit, the sheet or a step says it too
            if (InSheets(scope, number.Quantity) || Has(InSteps.Of(scope.Procedure), number.Quantity))
                continue;
            findings.Add(
                Info,
                text.Place(number.Start, number.End),
                $"{text.Text[number.Start..number.End]} is said in this message and nowhere else.",
                "A limit that lives in a message is measured by nobody and signed by nobody, and a change in the data sheet passes it by.",
                "Write it where it belongs: as a reading, a zone or a limit in the data sheet, or in the step that keeps it.");
        }
    }

    /// <summary>What many procedures share is read once; most numbers stand there.</summary>
    private static bool InSheets(Scope scope, Quantity number) =>
        Has(InData.Of(scope.Library.Workshop), number)
        || (scope.Machine is { } machine && Has(InData.Of(machine), number))
        || scope.ToolLists.Any(t => Has(InData.Of(t), number))
        || Has(InData.Of(scope.Procedure), number);

    private static bool Has(ImmutableArray<FoundQuantity> said, Quantity number) =>
        said.Any(s => s.Quantity.Unit.SameKindAs(number.Unit) && s.Quantity.CompareTo(number) == 0);

    private static ImmutableArray<FoundQuantity> Said(Procedure procedure)
    {
        var said = ImmutableArray.CreateBuilder<FoundQuantity>();
        foreach (var step in procedure.Steps)
        {
            WrittenTexts.Read(step, text => said.AddRange(QuantitiesInText.Find(text.Text)));
            foreach (var fact in step.Facts)
                said.AddRange(QuantitiesInText.Find(fact.Text.Value));
        }
        return said.ToImmutable();
    }

    private static IEnumerable<string> Texts(DataNode node) => node switch
    {
        DataText text => [text.Text],
        DataList list => list.Items.SelectMany(Texts),
        DataMap map => map.Entries.SelectMany(e => Texts(e.Value).Prepend(e.Key.Value)),
        _ => [],
    };
}
