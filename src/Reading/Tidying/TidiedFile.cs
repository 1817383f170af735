using System.Collections.Immutable;
using Witnessmark.Language.Text;

namespace Witnessmark.Reading.Tidying;

/// <summary>What of a layout can be out of order.</summary>
public enum Untidiness
{
    /// <summary>An unseen mark before the first letter.</summary>
    ByteOrderMark,

    /// <summary>Lines that end in CR LF.</summary>
    LineEnds,

    /// <summary>No line feed behind the last line, or more than one.</summary>
    LastLine,
    TrailingBlanks,

    /// <summary>Letters and their accents in two codes.</summary>
    Letters,
    Bullets,
    StepNumbers,
    Units,

    /// <summary>No blank line before a heading or step.</summary>
    BlankLines,
}

/// <summary>A file whose layout was out of order.</summary>
/// <param name="Tidied">Its whole text as it should be laid out.</param>
/// <param name="Changes">How many places of each kind, in the order of the kinds.</param>
public sealed record TidiedFile(OutputFile Tidied, ImmutableSortedDictionary<Untidiness, int> Changes)
{
    public string Path => Tidied.Path;
}

/// <summary>One place of a text and what is to stand there.</summary>
internal readonly record struct Edit(Untidiness Kind, TextSpan At, string By);
