using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using Witnessmark.Reading.Shapes;

namespace Witnessmark.Reading.Tests.Schemas;

/// <summary>Our schemas in a validator that is not ours: JsonSchema.Net (MIT), draft 2020-12.</summary>
internal static class Validator
{
    private static readonly EvaluationOptions Places = new() { OutputFormat = OutputFormat.List };

    private static readonly Dictionary<string, JsonSchema> Schemas = FileSchemas.All.ToDictionary(s => s.Name, s => JsonSchema.FromText(s.Text), StringComparer.Ordinal);

    public static bool Takes(string schema, JsonNode data) => Schemas[schema].Evaluate(Element(data)).IsValid;

    /// <summary>Where the validator has found something, as paths of keys from the top: <c>/fasteners/wheel-nuts/count</c>.</summary>
    public static IReadOnlyCollection<string> Refused(string schema, JsonNode data)
    {
        var result = Schemas[schema].Evaluate(Element(data), Places);
        return result.IsValid ? [] : [.. (result.Details ?? []).Where(d => !d.IsValid && d.Errors is { Count: > 0 }).Select(d => d.InstanceLocation.ToString()).Distinct(StringComparer.Ordinal)];
    }

    public static JsonElement Element(JsonNode? data) => JsonSerializer.SerializeToElement(data);
}
