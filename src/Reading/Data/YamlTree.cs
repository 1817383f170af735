using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Reading.Faults;

namespace Witnessmark.Reading.Data;

/// <summary>
/// A data text as a tree in which every scalar is the text that was written: <c>off</c>, <c>0417</c>, <c>40.10</c> and <c>10.9</c>
/// mean what they say. Bound from events, so that every node knows its place.
/// </summary>
public static class YamlTree
{
    /// <summary>Levels of nesting; the deepest data sheet has five.</summary>
    public const int DeepestLevel = 12;

    /// <summary>Names, texts and lists in one file; a large data sheet has two thousand.</summary>
    public const int MostNodes = 50_000;

    /// <param name="span">The part of <paramref name="source"/> that is data: the whole file, or the front matter without its dashes.</param>
    /// <param name="findings">Takes what is wrong with the text.</param>
    /// <returns>Null when nothing can be read; then there is a finding that says why.</returns>
    public static DataMap? Read(SourceText source, TextSpan span, FindingList findings)
    {
        if (!YamlSigns.HasNoTab(source, span, findings))
            return null;
        var root = new TreeBuilder(source, span, findings).Root();
        return root switch
        {
            null => null,
            DataMap map => map,
            DataText text => Refuse(text.At, $"`{Say.Short(text.Text)}` is a text of its own; a data file begins with a key.", findings),
            _ => Refuse(root.At, "This is a list; a data file begins with a key.", findings),
        };
    }

    private static DataMap? Refuse(Location at, string found, FindingList findings)
    {
        findings.Add(
            DataFaults.YamlBroken,
            at,
            found,
            "Without a first line such as `machine: okr-34` nobody can tell what the file is for.",
            "Begin with `key: value`, one to a line.");
        return null;
    }
}
