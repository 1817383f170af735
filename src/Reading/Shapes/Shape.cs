using System.Collections.Frozen;
using System.Collections.Immutable;

namespace Witnessmark.Reading.Shapes;

/// <summary>
/// The keys of one kind of thing. The reader binds by it and the schema is written from it, so that the two cannot disagree.
/// </summary>
internal sealed class Shape
{
    private readonly FrozenDictionary<string, Row> _byKey;

    /// <param name="name">Of its definition in a schema: <c>fastener-group</c>.</param>
    /// <param name="what">As a message calls it where it has no name of its own: <c>the data sheet</c>.</param>
    /// <param name="rows">Its keys in the order in which people read them.</param>
    public Shape(string name, string what, params ImmutableArray<Row> rows)
    {
        Name = name;
        What = what;
        Rows = rows;
        _byKey = rows.ToFrozenDictionary(r => r.Key, StringComparer.Ordinal);
    }

    public string Name { get; }

    public string What { get; }

    public ImmutableArray<Row> Rows { get; }

    /// <summary>What stands behind every other key, where people give the names; its own key is an example of one. Null: there is no other key.</summary>
    public Row? Other { get; init; }

    /// <summary>How those other keys are written.</summary>
    public Form OtherKeys { get; init; } = Row.AnyText;

    public ImmutableArray<Need> Needs { get; init; } = [];

    /// <summary>Whether a key without a value counts as not written, as on a form that is filled in bit by bit.</summary>
    public bool BlanksMayStay { get; init; }

    public Row? Find(string key) => _byKey.GetValueOrDefault(key) ?? Other;

    public static implicit operator Choice(Shape shape) => new(shape);
}
