using System.Collections.Immutable;
using System.Text.Json;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;

namespace Witnessmark.Rendering.Messages;

/// <summary>Findings for machines: one JSON object, lines and columns counted from 1.</summary>
public static class FindingJson
{
    public static string Write(ImmutableArray<Finding> findings) => JsonText.Of(json => Write(json, findings));

    /// <summary>Findings of several workshops in one object, each path with the folder of its workshop before it.</summary>
    public static string Write(ImmutableArray<(string Folder, ImmutableArray<Finding> Findings)> workshops) => JsonText.Of(json => Write(json, workshops));

    internal static void Write(Utf8JsonWriter json, ImmutableArray<Finding> findings) => Write(json, [("", findings)]);

    private static void Write(Utf8JsonWriter json, ImmutableArray<(string Folder, ImmutableArray<Finding> Findings)> workshops)
    {
        json.WriteStartArray("findings");
        foreach (var (folder, findings) in workshops)
            foreach (var finding in findings)
                Write(json, finding, folder);
        json.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter json, Finding finding, string folder)
    {
        json.WriteStartObject();
        json.WriteString("rule", finding.Rule.Name);
        json.WriteString("severity", finding.Severity.Word());
        Place(json, finding.At, folder);
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
            Place(json, further.At, folder);
            json.WriteString("says", further.Says);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        Write(json, finding.Correction, folder);
        json.WriteEndObject();
    }

    /// <summary>What an editor can carry out at one click; left out where somebody must think.</summary>
    private static void Write(Utf8JsonWriter json, Correction? correction, string folder)
    {
        if (correction is null)
            return;
        json.WriteStartObject("correction");
        json.WriteString("does", correction.Does);
        json.WriteStartArray("edits");
        foreach (var edit in correction.Edits)
        {
            json.WriteStartObject();
            Place(json, edit.At, folder);
            json.WriteString("text", edit.By);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Place(Utf8JsonWriter json, Location at, string folder)
    {
        var start = at.Start;
        var end = at.Source.PositionOf(at.Span.End);
        json.WriteString("path", folder.Length == 0 ? at.Source.Path : $"{folder}/{at.Source.Path}");
        json.WriteNumber("line", start.Line);
        json.WriteNumber("column", start.Column);
        json.WriteNumber("end-line", end.Line);
        json.WriteNumber("end-column", end.Column);
    }
}
