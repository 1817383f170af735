using System.Collections.Immutable;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Reading.Faults;

namespace Witnessmark.Reading.References;

/// <summary>Holds the names and values of a condition against what is declared.</summary>
internal sealed class ConditionCheck(NameCheck names, PlaceCheck places)
{
    private const string ConditionOf = "condition of ";

    /// <summary>Of threads, in the words of the data sheet.</summary>
    private static readonly ImmutableArray<string> ThreadConditions = ["dry", "oiled", "paste"];

    private static readonly ImmutableArray<string> Placing = ["stored", "placed"];

    private static readonly ImmutableArray<string> Blocks = ["engine-start", "travel", "closing"];

    public void Check(Condition condition)
    {
        foreach (var clause in condition.All)
            Check(clause);
    }

    public void Check(Clause clause)
    {
        switch (clause)
        {
            case StateClause state:
                State(state);
                break;
            case BundleClause bundle:
                names.Must(bundle.Name, NameKind.Bundle, "a condition without a value");
                break;
            case PeopleClause people:
                names.Must(people.Zone, NameKind.Zone, "people in");
                break;
            case DevicesClause devices:
                Value("a device", devices.Value, Placing, null);
                if (devices.ThatBlock is { } block)
                    Value("what a device blocks", block, Blocks, null);
                break;
        }
    }

    private void State(StateClause state)
    {
        if (state.AtPlace is { } place)
            places.Check(place);
        if (state.Thing.Value.StartsWith(ConditionOf, StringComparison.Ordinal))
        {
            var group = state.Thing;
            var start = group.Value.TrimEnd().LastIndexOf(' ') + 1;
            names.Must(Facts.TextPieces.Piece(group, start, group.Value.Length), NameKind.Fasteners, "condition of");
            foreach (var value in state.Values)
                Value(group.Value, value, ThreadConditions, null);
            return;
        }
        var declared = names.Must(state.Thing, NameKind.HasState, "a condition");
        var known = declared.SelectMany(d => d.Values).Distinct(StringComparer.Ordinal).ToImmutableArray();
        if (!known.IsEmpty)
            foreach (var value in state.Values)
                Value(state.Thing.Value, value, known, declared[0].At);
    }

    /// <summary>The last word of <c>2 of 12 removed</c> and <c>all engaged</c> is the value.</summary>
    private void Value(string thing, Located<string> written, ImmutableArray<string> known, Location? declaredAt)
    {
        var start = written.Value.LastIndexOf(' ') + 1;
        var value = Facts.TextPieces.Piece(written, start, written.Value.Length);
        if (known.Contains(value.Value) || value.Value.StartsWith('{'))
            return;
        names.Findings.Add(new Finding(
            StepFaults.ValueUnknown,
            value.At,
            $"`{thing}` cannot be `{Say.Short(value.Value)}`; it can be {Say.Or(known)}.",
            "A value that a thing never has is never reached: what waits for it waits for ever, what stops at it never stops.",
            NearMiss.Of(value.Value, known) is { } near ? $"Did you mean `{near}`?" : "Write one of these words.")
        {
            Correction = Correction.Respelled(value, known),
            Further = declaredAt is { } at ? [new FurtherPlace(at, $"`{thing}` is declared here")] : [],
        });
    }
}
