using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Records.Hashing;

/// <summary>Facts as parsed: what was understood is hashed, not how it was spelled.</summary>
internal static class FactCanon
{
    public static Canon Of(IEnumerable<Fact> facts) => Canon.List(facts.Select(f => Canon.Map((f.Word.Spelled(), Of(f.Value)))));

    private static Canon Of(FactValue value) => value switch
    {
        Amounts v => Canon.List(v.All.Select(Of)),
        NameList v => Words(v.Names),
        WrenchSetting v => Canon.Map(("wrench", Text(v.Wrench)), ("group", Text(v.Group)), ("adapter", Text(v.Adapter))),
        Landing v => Canon.Map(("load", Text(v.Load)), ("on", Text(v.On))),
        ConditionValue v => Canon.Map(("if", Of(v.Condition)), ("otherwise", Text(v.Otherwise))),
        LeftState v => Canon.List(v.States.Select(Of)),
        OutcomeValue v => Canon.Map(("name", Text(v.Name)), ("when", Canon.List(v.When.Select(Of)))),
        PerformValue v => Canon.Map(("procedure", Text(v.Procedure)), ("part", Text(v.Part)), ("given", Canon.List(v.Arguments.Select(Of)))),
        Duration v => Canon.Map(("range", QuantityCanon.Of(v.Range)), ("until", Text(v.Until))),
        Checker v => Canon.Map(("role", Text(v.Role)), ("mode", Canon.Text(v.Mode.ToString()))),
        SpokenWords v => Text(v.Text),
        EndingValue v => Of(v),
        AgainFrom v => Canon.Map(("step", Text(v.Step)), ("at-most", Canon.Maybe(v.AtMost)), ("then", Of(v.Then))),
        Loop v => Canon.Map(("kind", Text(v.Kind)), ("in", Words(v.In)), ("group", Text(v.OfGroup))),
        OddsValue v => Canon.List(v.All.Select(o => Canon.Map(
            ("name", Text(o.Name)), ("chance", QuantityCanon.Of(o.Chance)), ("minutes", QuantityCanon.Of(o.Minutes))))),
        HandOverValue v => Canon.Map(("from", Words(v.From)), ("to", Words(v.To))),
        DebtValue v => Canon.Map(("what", Text(v.What)), ("after", Canon.List(v.After.Select(q => QuantityCanon.Of(q.Value))))),
        _ => throw new NotSupportedException($"a fact of shape {value.GetType().Name} has no canonical form yet"),
    };

    private static Canon Of(Amount amount) => Canon.Map(
        ("thing", Text(amount.Thing)),
        ("count", Canon.Maybe(amount.Count?.Value)),
        ("of", Canon.Maybe(amount.OutOf?.Value)),
        ("at", Text(amount.AtPlace)),
        ("at-least", Canon.Maybe(amount.AtLeast)),
        ("all", Canon.Maybe(amount.All)));

    private static Canon Of(Argument argument) =>
        Canon.Map(("name", Text(argument.Name)), ("value", Text(argument.Value)), ("at", Text(argument.AtPlace)));

    private static Canon Of(EndingValue ending) => Canon.Map(("name", Text(ending.Name)), ("kind", Canon.Text(ending.Kind.ToString())));

    private static Canon Of(Condition condition) => Canon.List(condition.All.Select(Of));

    private static Canon Of(Clause clause) => clause switch
    {
        StateClause c => Canon.Map(
            ("thing", Text(c.Thing)), ("at", Text(c.AtPlace)), (c.Negated ? "is-not" : "is", Words(c.Values))),
        BundleClause c => Canon.Map(("condition", Text(c.Name))),
        PeopleClause c => Canon.Map(("people-in", Text(c.Zone))),
        DevicesClause c => Canon.Map(("devices", Canon.Text(c.Every ? "every" : "any")), ("block", Text(c.ThatBlock)), ("is", Text(c.Value))),
        MomentClause c => Canon.Map(("moment", Canon.Text(c.Moment))),
        _ => throw new NotSupportedException($"a clause of shape {clause.GetType().Name} has no canonical form yet"),
    };

    private static Canon Words(IEnumerable<Located<string>> words) => Canon.Words(words.Select(w => w.Value));

    private static Canon? Text(Located<string>? text) => Canon.Maybe(text?.Value);

    private static Canon Text(Located<string> text) => Canon.Text(text.Value);
}
