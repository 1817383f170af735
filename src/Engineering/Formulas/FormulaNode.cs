using Witnessmark.Engineering.Measuring;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;

namespace Witnessmark.Engineering.Formulas;

/// <summary>A formula as a tree; brackets are kept as the author set them.</summary>
internal abstract record FormulaNode(TextSpan At);

/// <summary><c>0.10 mm</c>, or a bare number: then <paramref name="Unit"/> is null.</summary>
internal sealed record Constant(decimal Number, Unit? Unit, int Decimals, TextSpan At) : FormulaNode(At);

/// <summary><c>sum of disc-thickness</c>, or a name alone.</summary>
internal sealed record Named(Gathering Gathering, string Name, TextSpan At) : FormulaNode(At);

internal sealed record Negative(FormulaNode Inner, TextSpan At) : FormulaNode(At);

internal sealed record Bracketed(FormulaNode Inner, TextSpan At) : FormulaNode(At);

/// <param name="Sign">One of + − × /, as printed.</param>
internal sealed record Combined(FormulaNode Left, char Sign, FormulaNode Right, TextSpan At) : FormulaNode(At);

/// <summary>How the values of a name become one.</summary>
internal enum Gathering
{
    /// <summary>There must be one.</summary>
    Only,
    Sum,
    Mean,
    Least,
    Most,
    Spread,
}

internal static class Gatherings
{
    public static Gathering? Find(string word) => word switch
    {
        "sum" => Gathering.Sum,
        "mean" => Gathering.Mean,
        "least" => Gathering.Least,
        "most" => Gathering.Most,
        "spread" => Gathering.Spread,
        _ => null,
    };

    /// <summary>As it is written before <c>of</c>; empty for a name alone.</summary>
    public static string Word(this Gathering gathering) => gathering == Gathering.Only ? "" : gathering.ToString().ToLowerInvariant();

    public static Quantity Of(this Gathering gathering, Measured measured) => gathering switch
    {
        Gathering.Sum => measured.Sum,
        Gathering.Least => measured.Least,
        Gathering.Most => measured.Most,
        Gathering.Spread => measured.Spread,
        _ => measured.Mean,
    };
}
