using System.Text;
using System.Text.Json.Nodes;
using Json.Schema;
using Witnessmark.Harness;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Shapes;

namespace Witnessmark.Reading.Tests.Schemas;

/// <summary>The schemas by themselves.</summary>
public sealed class SchemaTests
{
    public static TheoryData<string> Names => [.. FileSchemas.All.Select(s => s.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_schema_is_one_by_the_schema_of_schemas(string name)
    {
        var result = MetaSchemas.Draft202012.Evaluate(Validator.Element(Read(name)), new EvaluationOptions { OutputFormat = OutputFormat.List });
        Assert.True(result.IsValid, string.Join('\n', (result.Details ?? []).Where(d => d.Errors is not null).Select(d => $"{d.InstanceLocation}: {string.Join(", ", d.Errors!.Values)}")));
    }

    [Fact]
    public void The_schema_of_schemas_refuses_what_is_none() =>
        Assert.False(MetaSchemas.Draft202012.Evaluate(Validator.Element(JsonNode.Parse("""{"type": "text", "required": "title"}"""))).IsValid);

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_reference_leads_somewhere(string name)
    {
        var schema = Read(name);
        var known = schema["$defs"]!.AsObject().Select(d => $"#/$defs/{d.Key}").ToHashSet(StringComparer.Ordinal);
        var used = Below(schema).OfType<JsonObject>().Select(o => o["$ref"]?.GetValue<string>()).OfType<string>().ToList();
        Assert.NotEmpty(used);
        Assert.Empty(used.Except(known));
        Assert.Empty(known.Except(used));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_example_is_taken_at_its_own_key(string name)
    {
        var schema = Read(name);
        var rows = Below(schema).OfType<JsonObject>().Where(o => o["examples"] is JsonArray).ToList();
        Assert.NotEmpty(rows);
        var each = new JsonObject(rows.Select((row, i) => KeyValuePair.Create<string, JsonNode?>($"{i}", row.DeepClone())));
        var examples = new JsonObject(rows.Select((row, i) => KeyValuePair.Create($"{i}", row["examples"]![0]?.DeepClone())));
        var result = JsonSchema.FromText(new JsonObject { ["properties"] = each, ["$defs"] = schema["$defs"]!.DeepClone() }.ToJsonString())
            .Evaluate(Validator.Element(examples), new EvaluationOptions { OutputFormat = OutputFormat.List });
        Assert.True(result.IsValid, string.Join('\n', (result.Details ?? []).Where(d => d.Errors is not null).Select(d => $"{d.InstanceLocation} {each[d.InstanceLocation.ToString().Split('/')[1]]?["description"]}: {string.Join(", ", d.Errors!.Values)}")));
    }

    [Theory]
    [InlineData("front-matter", "procedure")]
    [InlineData("front-matter", "job")]
    [InlineData("workshop", "workshop")]
    [InlineData("machine", "machine")]
    [InlineData("tools", "tools")]
    [InlineData("register", "register")]
    [InlineData("sign-off", "sign-off")]
    [InlineData("translation", "translation")]
    public void A_file_with_every_key_at_its_example_is_read_by_the_binder(string name, string shape)
    {
        var definitions = Read(name)["$defs"]!.AsObject();
        var everything = Whole(definitions[shape]!.AsObject(), definitions)!.AsObject();
        // one interlock with all keys is four rules at once
        Assert.Empty(QuotedYaml.Findings(everything, name).Where(rule => rule != "interlock-shape"));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_key_says_what_it_is_for(string name) =>
        Assert.All(Below(Read(name)).OfType<JsonObject>().Where(o => o["examples"] is not null), row => Assert.True(row["description"]!.GetValue<string>().Length >= 3));

    [Fact]
    public void One_is_as_approved_down_to_its_last_byte() =>
        Approved.Check("Reading.Tests/Approved/sign-off.schema.json", FileSchemas.All.Single(s => s.Name == "sign-off").Text);

    [Fact]
    public void The_comment_that_leads_an_editor_to_a_schema_is_nothing_to_the_reader()
    {
        var findings = new FindingList();
        var machine = WorkshopReader.Read([RawFile.Of("okr-34.yaml", Encoding.UTF8.GetBytes("# $schema: ../shapes/machine.schema.json\nmachine: okr-34\n"))], findings).Machines.Find("okr-34");
        Assert.NotNull(machine);
        Assert.DoesNotContain(findings.InReadingOrder(), f => f.Rule.Name != "workshop-missing");
    }

    private static JsonNode Read(string name) => JsonNode.Parse(FileSchemas.All.Single(s => s.Name == name).Text)!;

    /// <summary>Every key of a shape, down to the last; null for what has no keys of its own.</summary>
    private static JsonNode? Whole(JsonObject schema, JsonObject definitions) => schema switch
    {
        { } s when s["properties"] is JsonObject keys => new JsonObject(keys.Select(k => KeyValuePair.Create<string, JsonNode?>(k.Key, Whole(k.Value!.AsObject(), definitions) ?? k.Value["examples"]![0]!.DeepClone()))),
        { } s when s["$ref"]?.GetValue<string>() is { } reference => Whole(definitions[reference.Split('/')[^1]]!.AsObject(), definitions),
        { } s when s["else"] is JsonObject other => Whole(other, definitions),
        { } s when s["anyOf"] is JsonArray choices => choices.Select(c => Whole(c!.AsObject(), definitions)).FirstOrDefault(c => c is not null),
        { } s when s["items"] is JsonObject item => Whole(item, definitions) is { } one ? new JsonArray(one) : null,
        { } s when s["propertyNames"] is not null && s["additionalProperties"] is JsonObject thing => Whole(thing, definitions) is { } one ? new JsonObject { ["a-name"] = one } : null,
        _ => null,
    };

    private static IEnumerable<JsonNode> Below(JsonNode node)
    {
        yield return node;
        var children = node switch
        {
            JsonObject map => map.Select(e => e.Value),
            JsonArray list => list,
            _ => [],
        };
        foreach (var below in children.OfType<JsonNode>().SelectMany(Below))
            yield return below;
    }
}
