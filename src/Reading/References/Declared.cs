using System.Collections.Immutable;
using Witnessmark.Language.Text;

namespace Witnessmark.Reading.References;

/// <summary>A name and what it stands for.</summary>
/// <param name="At">Where it is declared; null for what needs no declaring.</param>
/// <param name="Values">What a condition can say it is; empty when it has no state.</param>
internal sealed record Declared(NameKind Kind, string Name, Location? At, ImmutableArray<string> Values)
{
    public static Declared Of(NameKind kind, Located<string> name, params ImmutableArray<string> values) => new(kind, name.Value, name.At, values);
}
