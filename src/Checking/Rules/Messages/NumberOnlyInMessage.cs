using System.Collections.Immutable;
using Witnessmark.Checking.Wording;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Checking.Rules.Messages;

/// <summary>A number stands in a message and nowhere else.</summary>
public sealed class NumberOnlyInMessage : IProcedureRule
{
    public static RuleInfo Info { get; } = new("number-only-in-message", "Messages", Severity.Fault);

    private static readonly Once<DataNode, ImmutableArray<FoundQuantity>> InSheet = new(n => [.. Texts(n).SelectMany(QuantitiesInText.Find)]);

    private static readonly Once<Procedure, ImmutableArray<FoundQuantity>> InSteps = new(p => [.. Texts(p).SelectMany(QuantitiesInText.Find)]);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var text in scope.Procedure.Messages().SelectMany(WrittenTexts.Of))
            foreach (var number in QuantitiesInText.Find(text.Text))
            {
                // torque-in-prose says it
                if (number.Quantity.Unit.Kind == "torque")
                    continue;
                // the sheet, a limit or a step says it too
                if (Said(scope).Any(s => s.Quantity.Unit.SameKindAs(number.Quantity.Unit) && s.Quantity.CompareTo(number.Quantity) == 0))
                    continue;
                findings.Add(
                    Info,
                    text.Place(number.Start, number.End),
                    $"{text.Text[number.Start..number.End]} is said in this message and nowhere else.",
                    "A limit that lives in a message is measured by nobody and signed by nobody, and a change in the data sheet passes it by.",
                    "Write it where it belongs: as a reading, a zone or a limit in the data sheet, or in the step that keeps it.");
            }
    }

    private static IEnumerable<FoundQuantity> Said(Scope scope) => Sheets(scope).SelectMany(n => InSheet.Of(n)).Concat(InSteps.Of(scope.Procedure));

    private static IEnumerable<DataNode> Sheets(Scope scope) =>
    [
        scope.Procedure.Node,
        .. scope.Machine is { } machine ? [machine.Node] : ImmutableArray<DataNode>.Empty,
        .. scope.ToolLists.Select(t => t.Node),
        scope.Library.Workshop.Node,
    ];

    private static IEnumerable<string> Texts(Procedure procedure) =>
    [
        .. procedure.Steps.SelectMany(WrittenTexts.Of).Select(t => t.Text),
        .. procedure.StepFacts().Select(f => f.Fact.Text.Value),
    ];

    private static IEnumerable<string> Texts(DataNode node) => node switch
    {
        DataText text => [text.Text],
        DataList list => list.Items.SelectMany(Texts),
        DataMap map => map.Entries.SelectMany(e => Texts(e.Value).Prepend(e.Key.Value)),
        _ => [],
    };
}
