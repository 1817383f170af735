using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Proof;
using Witnessmark.Records.Hashing;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Tests.Laws;

/// <summary>Every place of a workshop at which another meaning can be written.</summary>
internal static class MeaningChanges
{
    private static readonly ImmutableHashSet<string> NotSaid = ["status", "approvals", "authors", "readings", "values", "tests", "hazards", "devices", "calls", "drops"];

    public static IEnumerable<MeaningChange> Of(Library library) =>
    [
        .. library.Procedures.SelectMany(Of),
        .. Items(library),
        .. Stops(library),
        .. Passes(library),
    ];

    private static IEnumerable<MeaningChange> Of(Procedure procedure)
    {
        var id = procedure.Id.Value;
        var steps = procedure.Steps.ToList();
        return
        [
            .. Head(procedure, id),
            .. steps.SelectMany(s => Step(s, id)),
            .. procedure.Parts.SelectMany(p => p.Sections).SelectMany(s => Order(s.Steps, id)),
            .. procedure.Parts.SelectMany(p => p.Sections.SelectMany(s => s.Messages.Concat(s.Steps.SelectMany(t => t.Messages)))).SelectMany(m => Message(m, id)),
            .. procedure.Parts.SelectMany(p => p.Facts.Concat(p.Sections.SelectMany(s => s.Facts))).SelectMany(f => Fact(f, id)),
            .. procedure.Parts.SelectMany(p => p.Sections).Select(s => s.Heading).OfType<Located<string>>().SelectMany(h => MeaningChange.EachWord("a word of a heading", h.At, id)),
        ];
    }

    /// <summary>Title, version, pins, applies-to, basis, crew: all but what may change while the text stands.</summary>
    private static IEnumerable<MeaningChange> Head(Procedure procedure, string id) => ((DataMap)procedure.Node).Entries
        .Where(e => !NotSaid.Contains(e.Key.Value))
        .SelectMany(e => MeaningChange.Numbers($"a number of {e.Key.Value}", e.Value.At, id)
            .Concat(e.Key.Value is "title" or "basis" ? MeaningChange.EachWord($"a word of {e.Key.Value}", e.Value.At, id) : []));

    private static IEnumerable<MeaningChange> Step(Step step, string id) =>
    [
        .. MeaningChange.EachWord("a word of a step's name", step.Name.At, id),
        .. Words(step.Text).SelectMany(t => MeaningChange.EachWord("a word of a step", t.At, id).Concat(MeaningChange.Numbers("a number of a step", t.At, id))),
        .. step.Remarks.SelectMany(r => Words(r)).SelectMany(t => MeaningChange.EachWord("a word of a remark", t.At, id)),
        .. step.Facts.SelectMany(f => Fact(f, id)),
        .. step.Facts.Select(f => MeaningChange.Without($"a {f.Word.Spelled()} left out", f.At, id)),
        .. step.Facts.Zip(step.Facts.Skip(1)).SelectMany(p => MeaningChange.Swapped("the order of facts", p.First.At, p.Second.At, id)),
    ];

    private static IEnumerable<MeaningChange> Fact(Fact fact, string id) =>
    [
        .. MeaningChange.Numbers($"a number of {fact.Word.Spelled()}", fact.Text.At, id),
        .. fact.Value is SpokenWords or ConditionValue { Otherwise: not null } ? MeaningChange.EachWord($"a word of {fact.Word.Spelled()}", fact.Text.At, id) : [],
        .. fact.Value is Checker { Mode: var mode } && fact.Text.At.Text.Contains('(', StringComparison.Ordinal) ? [MeaningChange.Of("who checks", fact.Text.At, Other(fact.Text.Value, mode), id)] : Array.Empty<MeaningChange>(),
    ];

    private static string Other(string text, CheckMode mode) =>
        mode == CheckMode.Independent ? text.Replace("independent)", "concurrent)", StringComparison.Ordinal) : text.Replace("concurrent)", "independent)", StringComparison.Ordinal);

    /// <summary>Two steps without messages of their own change places, numbers and all.</summary>
    private static IEnumerable<MeaningChange> Order(ImmutableArray<Step> steps, string id) => steps.Zip(steps.Skip(1))
        .Where(p => p.First.Messages.IsEmpty && p.Second.Messages.IsEmpty)
        .SelectMany(p => MeaningChange.Swapped("the order of steps", p.First.At, p.Second.At, id));

    private static IEnumerable<MeaningChange> Message(SafetyMessage message, string id) =>
    [
        .. MeaningChange.EachWord("a word of a message", message.Nature.At, id),
        .. Words(message.Rest).Concat(message.Avoid.SelectMany(a => Words(a))).SelectMany(t => MeaningChange.EachWord("a word of a message", t.At, id).Concat(MeaningChange.Numbers("a number of a message", t.At, id))),
        .. message.Word.Value == "WARNING" ? [MeaningChange.Of("a signal word", message.Word.At, "CAUTION", id)] : Array.Empty<MeaningChange>(),
        MeaningChange.Without("a message left out", message.At, id),
    ];

    /// <summary>Numbers, words and orders of every item that a procedure reaches; all procedures that reach it change with it.</summary>
    private static IEnumerable<MeaningChange> Items(Library library) => library.Procedures
        .SelectMany(p => Reached.From(library.ScopeOf(p)).Values.Select(i => (Item: i, p.Id.Value)))
        .GroupBy(r => (r.Item.Node.At.Source.Path, r.Item.Node.At.Span))
        .SelectMany(g => Node(g.First().Item.Node, [.. g.Select(r => r.Value).Distinct()]));

    private static IEnumerable<MeaningChange> Node(DataNode node, ImmutableArray<string> ids) => node switch
    {
        DataMap map => map.Entries.SelectMany(e => Node(e.Value, ids).Concat(ProseKeys.Has(e.Key.Value) ? MeaningChange.EachWord($"a word of {e.Key.Value}", e.Value.At, ids) : [])),
        DataList list => list.Items.SelectMany(i => Node(i, ids)).Concat(list.Items.Zip(list.Items.Skip(1)).SelectMany(p => MeaningChange.Swapped("the order of a list", p.First.At, p.Second.At, ids))),
        DataText text => MeaningChange.Numbers("a number of an item", text.At, ids),
        _ => [],
    };

    /// <summary>What a machine forbids at a stop holds for everything that is done on it.</summary>
    private static IEnumerable<MeaningChange> Stops(Library library) =>
        from machine in library.Machines
        let ids = library.Procedures.Where(p => p.Machine?.Value == machine.Id.Value).Select(p => p.Id.Value).ToImmutableArray()
        from rule in SafeStops.RulesOf(machine)
        from change in MeaningChange.EachWord("what is forbidden at a stop", rule.Never!.Value.At.Part("safe stop, ".Length, rule.Never.Value.At.Span.Length), ids)
            .Append(MeaningChange.Of("what is forbidden at a stop", rule.Never!.Value.At, "safe stop, engine = running, engine is not stopped", ids))
        select change;

    /// <summary>The passes of the house count where a sheet dials them and the fasteners have none of their own.</summary>
    private static IEnumerable<MeaningChange> Passes(Library library)
    {
        ImmutableArray<string> ids = [.. library.Procedures.Where(p => Asks(library.ScopeOf(p)).OfType<PassAsk>().Any() && !Reached.From(library.ScopeOf(p)).Values.Any(i => i.Node is DataMap m && m.Find("passes") is not null)).Select(p => p.Id.Value)];
        var passes = ((DataMap)((DataMap)library.Workshop.Node).Find("tightening")!.Value).Find("passes")!.Value;
        return ((DataList)passes).Items.SelectMany(i => MeaningChange.Numbers("a pass of the house", i.At, ids)).Concat(
            MeaningChange.Swapped("the order of passes", ((DataList)passes).Items[0].At, ((DataList)passes).Items[1].At, ids));
    }

    private static IEnumerable<Ask> Asks(Scope scope) => scope.Procedure.Parts.SelectMany(p => SheetPlanner.Plan(scope, p.Name?.Value).Steps).SelectMany(s => s.Asks);

    private static IEnumerable<PlainText> Words(IEnumerable<Inline> text) => text.SelectMany(i => i switch
    {
        PlainText p when p.At.Text == p.Text => [p],
        StrongText s => Words(s.Inner),
        LeaningText l => Words(l.Inner),
        _ => [],
    });
}
