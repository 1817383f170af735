using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Release;

/// <summary>A procedure applies to a position that its machine does not have.</summary>
public sealed class PositionUnknown : IProcedureRule
{
    public static RuleInfo Info { get; } = new("position-unknown", "Release", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        // no machine, or one that names no places
        if (scope.Machine is not { Places.IsEmpty: false } machine || scope.Procedure.AppliesTo is not { } applies)
            return;
        string[] known = [.. machine.Places.SelectMany(p => p.Names).Select(n => n.Value)];
        foreach (var position in applies.Value.Positions)
        {
            // a place of the machine
            if (known.Contains(position.Value))
                continue;
            findings.Add(
                Info,
                position.At,
                $"{scope.Procedure.Id.Value} applies to {position.Value}; {machine.Id.Value} has {Say.And(known)}.",
                "The position is printed large on the sheet and decides which wheel end is opened.",
                $"Write {Say.Or(known)}.",
                new FurtherPlace(machine.Places[0].Name.At, "the places of the machine"));
        }
    }
}
