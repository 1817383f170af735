using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Reading.References;

/// <summary>Holds the names in one fact against what is declared.</summary>
internal sealed class FactCheck(Scope scope, NameCheck names, PlaceCheck places)
{
    private readonly ConditionCheck _conditions = new(names, places);

    public void Check(ImmutableArray<Fact> facts)
    {
        foreach (var fact in facts)
            Check(fact);
    }

    private void Check(Fact fact)
    {
        Named(fact);
        foreach (var condition in fact.Conditions)
            _conditions.Check(condition);
        switch (fact.Value)
        {
            case Amounts amounts:
                Places(amounts);
                break;
            case LeftState left:
                foreach (var state in left.States)
                    _conditions.Check(state);
                break;
            case SpokenWords spoken when fact.Word == FactWord.Call:
                Call(spoken.Text);
                break;
            case Loop loop:
                Loop(loop, fact);
                break;
            case PerformValue perform:
                new PerformCheck(scope, names, places).Check(perform, fact.Text.At);
                break;
        }
    }

    /// <summary>The names that stand in it by themselves, and what each may stand for.</summary>
    private void Named(Fact fact)
    {
        switch (fact.Value)
        {
            case Amounts amounts:
                foreach (var amount in amounts.All)
                    Name(amount.Thing, KindsOf(fact.Word), fact);
                break;
            case NameList list when KindsOf(fact.Word) is var kinds and not NameKind.None:
                foreach (var name in list.Names)
                    if (fact.Word != FactWord.Zone || name.Value != "none")
                        Name(name, kinds, fact);
                break;
            case Checker checker:
                Name(checker.Role, NameKind.Role, fact);
                break;
            case HandOverValue hand:
                foreach (var role in hand.From.Concat(hand.To))
                    Name(role, NameKind.Role, fact);
                break;
            case Landing landing:
                Name(landing.Load, NameKind.Load, fact);
                break;
            case WrenchSetting setting:
                Setting(setting, fact);
                break;
        }
    }

    private void Setting(WrenchSetting setting, Fact fact)
    {
        Name(setting.Wrench, NameKind.Tool, fact);
        Name(setting.Group, NameKind.Fasteners, fact);
        if (setting.Adapter is { } adapter)
            Name(adapter, NameKind.Tool, fact);
    }

    /// <summary>Without any of its kind there is no list to hold it against: a workshop without roles, a common part without a machine's zones.</summary>
    private void Name(Located<string> name, NameKind kinds, Fact fact)
    {
        if (names.Book.Knows(kinds) || scope.Machine is not null || name.Value.StartsWith('{'))
            names.Must(name, kinds, fact.Word.Spelled());
    }

    private void Places(Amounts amounts)
    {
        foreach (var amount in amounts.All)
            if (amount.AtPlace is { } place)
                places.Check(place);
    }

    /// <summary>One word with a hyphen is meant as the name of a call; anything else is what is called out.</summary>
    private void Call(Located<string> text)
    {
        if (text.Value.Contains('-', StringComparison.Ordinal) && Facts.Spelling.OneName.IsMatch(text.Value))
            names.Must(text, NameKind.Call, "call");
    }

    /// <summary>Pins and passes are counted, not declared; a loop over places must name places.</summary>
    private void Loop(Loop loop, Fact fact)
    {
        if (loop.OfGroup is { } group)
            Name(group, NameKind.Fasteners, fact);
        else if (loop.In.IsEmpty)
            Name(loop.Kind, NameKind.PlaceKind, fact);
        else if (names.Book.Find(loop.Kind.Value).Any(d => d.Kind == NameKind.PlaceKind))
            foreach (var place in loop.In)
                names.Must(place, NameKind.Place, loop.Kind.Value);
    }

    private static NameKind KindsOf(FactWord word) => word switch
    {
        FactWord.By => NameKind.Role,
        FactWord.Zone => NameKind.Zone,
        FactWord.Tools or FactWord.Tool => NameKind.Tool,
        FactWord.Remove or FactWord.Fit => NameKind.Handled,
        FactWord.Loosen or FactWord.Snug or FactWord.Tighten => NameKind.Fasteners,
        FactWord.Place or FactWord.Recover => NameKind.Placed,
        FactWord.Count => NameKind.Counted,
        FactWord.Drain or FactWord.Fill => NameKind.Space,
        FactWord.Measure or FactWord.Inspect => NameKind.Reading,
        FactWord.Test => NameKind.Test,
        FactWord.WorkOut => NameKind.Value,
        FactWord.Lift => NameKind.Load,
        _ => NameKind.None,
    };
}
