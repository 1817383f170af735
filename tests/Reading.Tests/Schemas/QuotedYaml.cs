using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Records;

namespace Witnessmark.Reading.Tests.Schemas;

/// <summary>Data as a file that our reader reads.</summary>
internal static class QuotedYaml
{
    private static readonly JsonSerializerOptions AsWritten = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The rules of what the reader finds.</summary>
    public static IReadOnlyList<string> Findings(JsonObject data, string schema)
    {
        var yaml = new StringBuilder();
        Write(data, 0, yaml);
        var isProcedure = schema == "front-matter";
        var text = isProcedure ? $"---\n{yaml}---\n\n# A title\n\n## A section\n\n1. **Look at it.** Once.\n" : yaml.ToString();
        var findings = new FindingList();
        var file = RawFile.Of(isProcedure ? "a.md" : "a.yaml", Encoding.UTF8.GetBytes(text));
        if (schema == "sign-off")
            SignOffReader.Read(file, findings);
        else
            WorkshopReader.Read([file], findings);
        return [.. findings.InReadingOrder().Select(f => f.Rule.Name).Where(r => r != "workshop-missing")];
    }

    /// <summary>Block style; every scalar in quotes, so that it is the text that it was.</summary>
    private static void Write(JsonNode? node, int depth, StringBuilder yaml)
    {
        if (node is JsonObject map)
            foreach (var (key, value) in map)
                Entry($"{Quoted(key)}:", value, depth, yaml);
        else if (node is JsonArray list)
            foreach (var item in list)
                Entry("-", item, depth, yaml);
    }

    private static void Entry(string head, JsonNode? value, int depth, StringBuilder yaml)
    {
        yaml.Append(' ', depth * 2).Append(head);
        if (value is JsonValue text)
            yaml.Append(' ').Append(Quoted(text.GetValue<string>())).Append('\n');
        else if (value is JsonArray { Count: 0 } or JsonObject { Count: 0 })
            yaml.Append(value is JsonArray ? " []\n" : " {}\n");
        else
        {
            yaml.Append('\n');
            Write(value, depth + 1, yaml);
        }
    }

    private static string Quoted(string text) => JsonSerializer.Serialize(text, AsWritten);
}
