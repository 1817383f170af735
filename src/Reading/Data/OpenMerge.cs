using System.Globalization;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Faults;

namespace Witnessmark.Reading.Data;

/// <summary>What git writes into a file where two have changed the same lines and nobody has yet said which holds.</summary>
internal static class OpenMerge
{
    private const string Ours = "<<<<<<< ";
    private const string Theirs = ">>>>>>> ";

    public static Finding? In(SourceText source)
    {
        if (LineWith(source.Content, Ours, 0) is not (>= 0 and var begin) || LineWith(source.Content, Theirs, begin) is not (>= 0 and var end))
            return null;
        var (first, last) = (source.PositionOf(begin).Line, source.PositionOf(end).Line);
        return new Finding(
            DataFaults.MergeLeftOpen,
            source.At(begin, begin + source.Line(first).Length),
            string.Create(CultureInfo.InvariantCulture, $"Lines {first} to {last} are a merge that git could not finish: they have what two people wrote, one below the other."),
            "Nobody has said which of the two holds, so nothing in this file is read.",
            IsRegister(source)
                ? "In a register both hold: take out the lines of git (<<<<<<<, =======, >>>>>>>) and leave every other. " +
                    "A file .gitattributes beside it with the line `register*.yaml merge=union` lets git do so by itself."
                : "Between <<<<<<< and ======= stands one, from there to >>>>>>> the other. Keep what is right and take out the three lines of git.");
    }

    private static bool IsRegister(SourceText source) => Path.GetFileName(source.Path).StartsWith("register", StringComparison.OrdinalIgnoreCase);

    private static int LineWith(string content, string sign, int from)
    {
        for (var at = content.IndexOf(sign, from, StringComparison.Ordinal); at >= 0; at = content.IndexOf(sign, at + 1, StringComparison.Ordinal))
            if (at == 0 || content[at - 1] == '\n')
                return at;
        return -1;
    }
}
