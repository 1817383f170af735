using System.Collections.Immutable;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Reading.Shapes;

/// <summary>How one value is written.</summary>
internal abstract record Form;

internal sealed record TextForm : Form;

/// <summary>A name that conditions and steps can quote.</summary>
internal sealed record NameForm : Form;

/// <summary>The name of a whole file.</summary>
internal sealed record IdForm : Form;

/// <summary>One of a few words.</summary>
internal sealed record WordForm(ImmutableArray<string> Words) : Form;

/// <summary>A whole number.</summary>
internal sealed record CountForm(int Least, int Most) : Form
{
    /// <summary>A word that may stand in front of it, <c>up to</c>; null: none.</summary>
    public string? Before { get; init; }
}

/// <summary>A number above zero without a unit.</summary>
internal sealed record FactorForm : Form;

/// <param name="Size">Which of the ways to write a size.</param>
/// <param name="Kind">Kind of the unit table (torque, length …); null: any.</param>
/// <param name="Least">What the number may be.</param>
internal sealed record SizeForm(Size Size, string? Kind, LeastSize Least) : Form
{
    /// <summary>A pattern of what else may stand there, with a reader of its own; null: nothing.</summary>
    public string? Or { get; init; }
}

/// <summary>A text with a reader of its own, such as a thread.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Pattern">Gives a regular expression made of what the reader itself is made of; it takes all that the reader takes.</param>
internal sealed record SpelledForm(string Name, Func<string> Pattern) : Form;

internal enum Size
{
    Quantity,
    Toleranced,
    Range,

    /// <summary><c>75 %</c></summary>
    Share,

    /// <summary><c>20 to 100 %</c>, both ends given</summary>
    Shares,
}
