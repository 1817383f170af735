using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;
using Witnessmark.Reading.FrontMatter;

namespace Witnessmark.Reading.Steps;

/// <summary>Reads a procedure or job: front matter, then text.</summary>
public static class ProcedureReader
{
    /// <summary>The procedure as far as it can be read, or null when it has no name. Whatever is wrong is in <paramref name="findings"/>.</summary>
    public static Procedure? Read(SourceText source, FindingList findings)
    {
        if (FrontMatterSpan.Find(source, findings) is not { } spans)
            return null;
        var data = YamlTree.Read(source, spans.Data, findings);
        var text = MarkdownText.Parse(source, spans.Body, findings);
        var body = text is null ? null : BodyReader.Read(text, source, spans.Body, findings);
        if (data is null || body is null || FrontMatterReader.Read(source, data, findings) is not { } procedure)
            return null;
        return procedure with { Heading = body.Title, Introduction = body.Introduction, Parts = body.Parts };
    }
}
