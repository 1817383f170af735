using System.Collections.Immutable;
using Witnessmark.Language.Text;

namespace Witnessmark.Reading.Shapes;

/// <summary>What stands behind a key.</summary>
internal abstract record Holds;

internal sealed record One(Form Form) : Holds;

/// <summary>A list; one alone may stand without brackets.</summary>
/// <param name="Form">How each is written.</param>
/// <param name="Most">How many there may be at most; null: any number.</param>
/// <param name="OneMayHaveCommas">Whether one alone may have a comma in it. Elsewhere a comma shows that brackets were forgotten.</param>
internal sealed record Many(Form Form, int? Most = null, bool OneMayHaveCommas = false) : Holds;

/// <summary>Keys below the key.</summary>
internal sealed record Below(Shape Shape) : Holds;

/// <summary>A list whose items have keys but no names.</summary>
internal sealed record Members(Choice Choice) : Holds;

/// <summary>Things, each under its name with keys of its own.</summary>
/// <param name="Shape">Of one thing.</param>
/// <param name="ShortFor">The key that a value without keys stands for: <c>engine: [stopped, running]</c> is its <c>values</c>.</param>
internal sealed record Each(Shape Shape, string? ShortFor = null) : Holds;

/// <summary>Kept as it was written.</summary>
internal sealed record Anything : Holds;

/// <summary>A shape that follows from the keys that are there.</summary>
/// <param name="Else">When no telling key is there.</param>
/// <param name="By">The first that fits counts.</param>
internal sealed record Choice(Shape Else, params ImmutableArray<Telling> By)
{
    public Shape Of(DataMap map)
    {
        foreach (var telling in By)
            if (telling.Keys.Any(together => together.All(key => map.Find(key) is not null)))
                return telling.Shape;
        return Else;
    }
}

/// <param name="Shape">What the thing then is.</param>
/// <param name="Keys">Keys that tell it: all of one set.</param>
internal sealed record Telling(Shape Shape, params ImmutableArray<ImmutableArray<string>> Keys);
