using System.Collections.Immutable;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;

namespace Witnessmark.Language.Model;

/// <summary>What a rule of the machine waits for, or what ends a proof.</summary>
public abstract record Happening(Location At);

/// <summary><c>hub becomes fitted</c>, <c>brake-line at CL becomes open</c></summary>
public sealed record Becoming(Located<string> Thing, Located<string>? AtPlace, Located<string> Value, Location At) : Happening(At);

/// <summary><c>test leak-check</c></summary>
public sealed record Testing(Located<string> Test, Location At) : Happening(At);

/// <summary><c>stop above 15 min</c>: work rests for longer.</summary>
public sealed record Resting(Located<Quantity> Longer, Location At) : Happening(At);

/// <summary><c>change of people</c></summary>
public sealed record PeopleChanging(Location At) : Happening(At);

/// <summary>Which steps a rule <c>every:</c> speaks of.</summary>
public abstract record StepsMeant(Location At);

/// <summary><c>step where engine becomes running</c></summary>
public sealed record StepsWhere(Becoming What) : StepsMeant(What.At);

/// <summary><c>step that changes lock-pins</c></summary>
public sealed record StepsThatChange(Located<string> Thing, Location At) : StepsMeant(At);

/// <summary><c>step that lifts or lands</c></summary>
public sealed record StepsThat(ImmutableArray<FactWord> Verbs, Location At) : StepsMeant(At);

/// <summary>What such a step must have: <c>call</c>, <c>place shim-bag</c>, <c>tools face-shield</c>, <c>crew 2</c>.</summary>
/// <param name="Word">Null for <c>crew</c>.</param>
/// <param name="Thing">Null when any will do.</param>
/// <param name="People">How many, for <c>crew</c>.</param>
public sealed record Had(FactWord? Word, Located<string>? Thing, int People, Location At);
