using System.Collections.Immutable;
using System.Text.Json;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;

namespace Witnessmark.Rendering.Messages;

/// <summary>Findings for machines: one JSON object, lines and columns counted from 1.</summary>
public static class FindingJson
{
    public static string Write(ImmutableArray<Finding> findings) => JsonText.Of(json => Write(json, findings));

    internal static void Write(Utf8JsonWriter json, ImmutableArray<Finding> findings)
    {
        json.WriteStartArray("findings");
        foreach (var finding in findings)
            Write(json, finding);
        json.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter json, Finding finding)
    {
        json.WriteStartObject();
        json.WriteString("rule", finding.Rule.Name);
        json.WriteString("severity", finding.Severity.Word());
        Place(json, finding.At);
        json.WriteString("found", finding.Found);
        json.WriteString("why", finding.Why);
        json.WriteString("put-right", finding.PutRight);
        json.WriteStartArray("worked");
        foreach (var line in finding.Worked)
            json.WriteStringValue(line);
        json.WriteEndArray();
        json.WriteStartArray("further");
        foreach (var further in finding.Further)
        {
            json.WriteStartObject();
            Place(json, further.At);
            json.WriteString("says", further.Says);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Place(Utf8JsonWriter json, Location at)
    {
        var start = at.Start;
        var end = at.Source.PositionOf(at.Span.End);
        json.WriteString("path", at.Source.Path);
        json.WriteNumber("line", start.Line);
        json.WriteNumber("column", start.Column);
        json.WriteNumber("end-line", end.Line);
        json.WriteNumber("end-column", end.Column);
    }
}
