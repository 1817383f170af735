using System.Collections.Immutable;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;

namespace Witnessmark.Language.Model;

/// <summary>One typed fact: <c>- key: value</c>.</summary>
/// <param name="Text">The value as written (trimmed) and where.</param>
public sealed record Fact(FactWord Word, Location KeyAt, Located<string> Text, FactValue Value)
{
    public Location At => new(KeyAt.Source, KeyAt.Span.Cover(Text.At.Span));

    /// <summary>The conditions that it states: one, or the alternatives of an outcome.</summary>
    public ImmutableArray<Condition> Conditions => Value switch
    {
        ConditionValue value => [value.Condition],
        OutcomeValue outcome => outcome.When,
        _ => [],
    };
}

/// <summary>What a fact says, by shape.</summary>
public abstract record FactValue;

/// <summary>remove fit loosen snug tighten place recover count</summary>
public sealed record Amounts(ImmutableArray<Amount> All) : FactValue;

/// <summary><c>backing-ring-bolts 10 of 12 at CL</c>; in <c>count: friction-disc = 9</c> the 9 is <paramref name="Count"/>.</summary>
/// <param name="Thing">A declared name, a device tag, or <c>{parameter}</c>.</param>
/// <param name="Count">Null: all of it.</param>
/// <param name="AtLeast">True for <c>&gt;= n</c> or <c>from n</c>.</param>
/// <param name="All">True for <c>= all</c>.</param>
public sealed record Amount(Located<string> Thing, Located<int>? Count, Located<int>? OutOf, Located<string>? AtPlace, bool AtLeast, bool All, Location At);

/// <summary>by tools drain fill measure inspect test lift zone decide tool checks was</summary>
public sealed record NameList(ImmutableArray<Located<string>> Names) : FactValue;

/// <summary>work-out: <c>setting of {wrench} for {group} with {adapter}</c></summary>
public sealed record WrenchSetting(Located<string> Wrench, Located<string> Group, Located<string>? Adapter) : FactValue;

/// <summary>land</summary>
public sealed record Landing(Located<string> Load, Located<string> On) : FactValue;

/// <summary>starts-with ends-with only-if stop-if requires until</summary>
/// <param name="Otherwise">Text behind a dash in <c>stop-if</c>: what to do then.</param>
public sealed record ConditionValue(Condition Condition, Located<string>? Otherwise) : FactValue;

/// <summary>leaves</summary>
public sealed record LeftState(ImmutableArray<StateClause> States) : FactValue;

/// <summary>outcome</summary>
/// <param name="When">Alternatives; empty for <c>otherwise</c>.</param>
public sealed record OutcomeValue(Located<string> Name, ImmutableArray<Condition> When) : FactValue
{
    public bool Otherwise => When.IsEmpty;
}

/// <summary>perform</summary>
/// <param name="Procedure">The id, or <c>this</c>.</param>
public sealed record PerformValue(Located<string> Procedure, Located<string>? Part, ImmutableArray<Argument> Arguments) : FactValue;

/// <summary><c>group = cooling-clamps at A</c></summary>
public sealed record Argument(Located<string> Name, Located<string> Value, Located<string>? AtPlace);

/// <summary>time, wait</summary>
public sealed record Duration(QuantityRange Range, Located<string>? Until) : FactValue;

/// <summary>checked-by</summary>
public sealed record Checker(Located<string> Role, CheckMode Mode) : FactValue;

public enum CheckMode
{
    /// <summary>Later, alone, without watching the work.</summary>
    Independent,

    /// <summary>While the work is done.</summary>
    Concurrent,
}

/// <summary>call answer hold: words to be spoken or seen; <c>___</c> is a blank to fill.</summary>
public sealed record SpokenWords(Located<string> Text) : FactValue
{
    public int Blanks => Text.Value.Split("___").Length - 1;
}

/// <summary>end</summary>
public sealed record EndingValue(Located<string> Name, EndingKind Kind) : FactValue;

public enum EndingKind
{
    Done,
    StoppedSafe,
    Escalate,
}

/// <summary>again-from</summary>
public sealed record AgainFrom(Located<string> Step, int AtMost, EndingValue Then) : FactValue;

/// <summary>for-each</summary>
/// <param name="Kind">wheel-end, pin, pass …</param>
/// <param name="In">The listed values; empty with <paramref name="OfGroup"/> or for every place of the kind.</param>
public sealed record Loop(Located<string> Kind, ImmutableArray<Located<string>> In, Located<string>? OfGroup) : FactValue;

/// <summary>odds</summary>
public sealed record OddsValue(ImmutableArray<Odd> All) : FactValue;

public sealed record Odd(Located<string> Name, Quantity Chance, Quantity Minutes);

/// <summary>hand-over</summary>
public sealed record HandOverValue(ImmutableArray<Located<string>> From, ImmutableArray<Located<string>> To) : FactValue;

/// <summary>owes</summary>
public sealed record DebtValue(Located<string> What, ImmutableArray<Located<Quantity>> After) : FactValue;
