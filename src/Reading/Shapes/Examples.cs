using System.Text.Json.Nodes;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;

namespace Witnessmark.Reading.Shapes;

/// <summary>The example of a row as it is read.</summary>
internal static class Examples
{
    public static JsonNode Of(Row row)
    {
        var example = row.Holds switch
        {
            Each => $"{{a-name: {row.Example}}}",
            Members => $"[{row.Example}]",
            _ => row.Example,
        };
        var source = new SourceText(row.Key, $"example: {example}");
        return YamlTree.Read(source, new TextSpan(0, source.Content.Length), new FindingList())?.Find("example") is { } entry
            ? Json(entry.Value)
            : throw new InvalidOperationException($"the example of {row.Key} cannot be read");
    }

    private static JsonNode Json(DataNode node) => node switch
    {
        DataMap map => new JsonObject(map.Entries.Select(e => KeyValuePair.Create<string, JsonNode?>(e.Key.Value, Json(e.Value)))),
        DataList list => new JsonArray([.. list.Items.Select(Json)]),
        DataText text => text.Text,
        _ => throw new InvalidOperationException("a value of no kind"),
    };
}
