using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Reading.Data;
using Witnessmark.Reading.Faults;
using Witnessmark.Reading.FrontMatter;
using Witnessmark.Reading.Translations;

namespace Witnessmark.Reading.Steps;

/// <summary>Reads a procedure, a job or a translation of one: front matter, then text.</summary>
public static class ProcedureReader
{
    /// <summary>Characters of one procedure; the longest of the demo has twelve thousand. Some hostile texts take the square of their length to read.</summary>
    public const int MostCharacters = 100_000;

    /// <summary>The procedure as far as it can be read, or null when it has no name. Whatever is wrong is in <paramref name="findings"/>.</summary>
    public static Procedure? Read(SourceText source, FindingList findings) => File(source, findings) as Procedure;

    /// <summary>A <see cref="Procedure"/> or a <see cref="Translation"/>, as its first keys say.</summary>
    public static object? File(SourceText source, FindingList findings)
    {
        if (source.Content.Length > MostCharacters)
            return TooLong(source, findings);
        if (FrontMatterSpan.Find(source, findings) is not { } spans)
            return null;
        var data = YamlTree.Read(source, spans.Data, findings);
        var text = MarkdownText.Parse(source, spans.Body, findings);
        if (data?.Find(TranslationReader.Key) is not null)
            return TranslationReader.Read(source, data, text, spans.Body, findings);
        var body = text is null ? null : BodyReader.Read(text, source, spans.Body, TextKind.Procedure, findings);
        if (data is null || body is null || FrontMatterReader.Read(source, data, findings) is not { } procedure)
            return null;
        return procedure with { Heading = body.Title, Introduction = body.Introduction, Parts = body.Parts };
    }

    private static Procedure? TooLong(SourceText source, FindingList findings)
    {
        findings.Add(
            DataFaults.TextTooLarge,
            source.At(0, 0),
            $"This procedure has {Say.Number(source.Content.Length)} characters; the most that is read is {Say.Number(MostCharacters)}.",
            "A procedure is some ten thousand characters. Nobody works through one ten times as long, and reading it would hold up the whole workshop.",
            "Split it into procedures of their own, and perform them.");
        return null;
    }
}
