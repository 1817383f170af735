using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Faults;

namespace Witnessmark.Reading.Steps;

/// <summary>Where front matter and text lie in a file.</summary>
/// <param name="Data">Between the two lines of three dashes.</param>
/// <param name="Body">Where the text begins.</param>
internal readonly record struct FrontMatterSpan(TextSpan Data, int Body)
{
    private const string Dashes = "---";

    /// <summary>Null when there is none; then there is a finding that says why.</summary>
    public static FrontMatterSpan? Find(SourceText source, FindingList findings)
    {
        var text = source.Content;
        if (text.AsSpan().Trim().IsEmpty)
            return Refuse(findings, StepFaults.NothingWritten, source.At(0, 0), "There is nothing in this file.", "A procedure that says nothing can be neither checked nor printed.", "Begin with the front matter: three dashes, `procedure: WB-40` and what else belongs to it, three dashes.");
        if (LineEnd(text, 0) is var first && text[..first].TrimEnd() != Dashes)
            return Refuse(findings, StepFaults.FrontMatterMissing, source.At(0, first), "The file does not begin with three dashes.", "Without front matter nobody knows which procedure this is, for which machine, in which version.", "Put `---` on the first line, then `procedure:`, `title:`, `version:` and the rest, then `---` again.");
        for (var start = Next(text, first); start < text.Length; start = Next(text, LineEnd(text, start)))
            if (text[start..LineEnd(text, start)].TrimEnd() == Dashes)
                return new FrontMatterSpan(new TextSpan(Next(text, first), start), Next(text, LineEnd(text, start)));
        return Refuse(findings, StepFaults.FrontMatterOpen, source.At(0, first), "The front matter is not closed.", "Everything below the first line is taken for front matter, steps and warnings included.", "Put three dashes on a line of their own behind its last key.");
    }

    private static FrontMatterSpan? Refuse(FindingList findings, RuleInfo rule, Location at, string found, string why, string putRight)
    {
        findings.Add(rule, at, found, why, putRight);
        return null;
    }

    private static int LineEnd(string text, int start)
    {
        var end = text.IndexOf('\n', start);
        return end < 0 ? text.Length : end;
    }

    private static int Next(string text, int lineEnd) => Math.Min(lineEnd + 1, text.Length);
}
