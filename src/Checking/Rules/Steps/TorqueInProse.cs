using Witnessmark.Checking.Wording;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Steps;

/// <summary>A torque is written in words that people read, where no fact keeps it right.</summary>
public sealed class TorqueInProse : IProcedureRule
{
    public static RuleInfo Info { get; } = new("torque-in-prose", "Steps", Severity.Fault);

    public static void Check(Scope scope, FindingList findings) => WrittenTexts.Read(scope.Procedure, text => Check(text, scope, findings));

    private static void Check(WrittenText text, Scope scope, FindingList findings)
    {
        var torques = QuantitiesInText.Find(text.Text).RemoveAll(q => q.Quantity.Unit.Kind != "torque");
        // no torque in these words
        if (torques.IsEmpty)
            return;
        var (start, end) = (torques.Min(t => t.Start), torques.Where(t => t.Start <= torques[0].End).Max(t => t.End));
        findings.Add(
            Info,
            text.Place(start, end),
            $"{text.Text[start..end]} stands in the words of {scope.Procedure.Id.Value}. {Known(scope, torques[0])}",
            "A torque belongs to the data sheet and is written once. When it is changed there, this line keeps the old one, and somebody dials it.",
            "Take the number out of the words. `tighten:` with the name of the group prints torque, passes and wrench setting in this place.");
    }

    private static string Known(Scope scope, FoundQuantity torque)
    {
        var group = scope.Machine?.Fasteners.FirstOrDefault(f => f.Torque?.Value.Target is { } target
            && target.Unit.SameKindAs(torque.Quantity.Unit) && target.CompareTo(torque.Quantity) == 0);
        return group is null ? "No group of the data sheet has this torque." : $"The data sheet has it already, for {group.Id.Value}.";
    }
}
