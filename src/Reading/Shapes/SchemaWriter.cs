using System.Collections.Immutable;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Witnessmark.Language.Wording;

namespace Witnessmark.Reading.Shapes;

/// <summary>Shapes as JSON Schema. What several places share stands once, under <c>$defs</c>.</summary>
internal sealed class SchemaWriter
{
    private const string AsText =
        "Every scalar is the text that is written there: load the YAML with all scalars as strings. " +
        "Where it is loaded otherwise, a plain number is taken where a text or a count belongs.";

    private static readonly JsonSerializerOptions Layout = new()
    {
        WriteIndented = true,
        IndentSize = 2,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    private readonly JsonObject _shared = [];
    private readonly FormSchemas _forms;
    private bool _blanksMayStay;

    private SchemaWriter() => _forms = new FormSchemas(_shared);

    public static string Write(string holds, Choice choice)
    {
        var writer = new SchemaWriter { _blanksMayStay = choice.Else.BlanksMayStay };
        var schema = new JsonObject
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["title"] = $"Witnessmark: {holds}",
            ["description"] = AsText,
        };
        foreach (var (key, value) in writer.Chosen(choice).ToList())
            schema[key] = value?.DeepClone();
        schema["$defs"] = writer._shared;
        return schema.ToJsonString(Layout) + "\n";
    }

    /// <summary>The first telling key that is there tells the shape.</summary>
    private JsonObject Chosen(Choice choice)
    {
        var schema = Shared(choice.Else);
        foreach (var telling in choice.By.Reverse())
            schema = new JsonObject
            {
                ["if"] = AnyWhole(telling.Keys),
                ["then"] = Shared(telling.Shape),
                ["else"] = schema,
            };
        return schema;
    }

    private JsonObject Shared(Shape shape)
    {
        if (!_shared.ContainsKey(shape.Name))
        {
            // named first: a shape stands before what it holds
            _shared[shape.Name] = null;
            _shared[shape.Name] = Whole(shape);
        }
        return Reference(shape.Name);
    }

    private JsonObject Whole(Shape shape)
    {
        var schema = new JsonObject { ["title"] = shape.What, ["type"] = "object" };
        if (!shape.Rows.IsEmpty)
            schema["properties"] = new JsonObject(shape.Rows.Select(row => KeyValuePair.Create<string, JsonNode?>(row.Key, Property(row))));
        if (shape.Rows.Where(row => row.Needed).ToList() is { Count: > 0 } needed)
            schema["required"] = Texts(needed.Select(row => row.Key));
        schema["additionalProperties"] = shape.Other is { } other ? Property(other) : false;
        if (shape.OtherKeys is not TextForm)
            schema["propertyNames"] = _forms.Of(shape.OtherKeys);
        if (!shape.Needs.IsEmpty)
            schema["allOf"] = new JsonArray([.. shape.Needs.SelectMany(Needed)]);
        return schema;
    }

    private JsonObject Property(Row row)
    {
        var schema = new JsonObject { ["description"] = Say.Capital(row.Meaning), ["examples"] = new JsonArray(Examples.Of(row)) };
        foreach (var (key, value) in (_blanksMayStay && row.Holds is not Anything ? OrBlank(Held(row.Holds)) : Held(row.Holds)).ToList())
            schema[key] = value?.DeepClone();
        return schema;
    }

    private static JsonObject OrBlank(JsonObject schema) => AnyOf(new JsonObject { ["enum"] = new JsonArray("", null) }, schema);

    private JsonObject Held(Holds holds) => holds switch
    {
        One one => _forms.Of(one.Form),
        Many many => AnyOf(ListOf(_forms.Of(many.Form), many.Most), Alone(many)),
        Below below => Shared(below.Shape),
        Members members => ListOf(_blanksMayStay ? OrBlank(Chosen(members.Choice)) : Chosen(members.Choice), null),
        Each each => new JsonObject
        {
            ["type"] = "object",
            ["propertyNames"] = _forms.Of(Row.AName),
            ["additionalProperties"] = each.ShortFor is { } key ? AnyOf(Shared(each.Shape), Held(each.Shape.Find(key)!.Holds)) : Shared(each.Shape),
        },
        _ => [],
    };

    private static JsonObject ListOf(JsonObject item, int? most)
    {
        var list = new JsonObject { ["type"] = "array", ["items"] = item };
        if (most is { } number)
            list["maxItems"] = number;
        return list;
    }

    private JsonObject Alone(Many many)
    {
        var schema = _forms.Of(many.Form);
        if (!many.OneMayHaveCommas)
            schema["not"] = new JsonObject { ["pattern"] = ",", ["type"] = "string" };
        return schema;
    }

    private static IEnumerable<JsonNode> Needed(Need need) => need switch
    {
        FirstBegun begun => [Begun(begun.Sets)],
        Unless unless =>
        [
            new JsonObject
            {
                ["if"] = new JsonObject
                {
                    ["properties"] = new JsonObject { [unless.Other] = new JsonObject { ["const"] = unless.Value } },
                    ["required"] = Texts([unless.Other]),
                },
                ["else"] = Required([unless.Key]),
            },
        ],
        OneWhole whole => [new JsonObject { ["oneOf"] = new JsonArray([.. whole.Heads.Select(head => Required([head]))]) }, AnyWhole(whole.Sets)],
        _ => [],
    };

    private static JsonObject Begun(ImmutableArray<ImmutableArray<string>> sets) => sets.Length == 1 ? Required(sets[0]) : new JsonObject
    {
        ["if"] = AnyOf([.. sets[0].Select(key => Required([key]))]),
        ["then"] = Required(sets[0]),
        ["else"] = Begun(sets[1..]),
    };

    private static JsonObject AnyWhole(ImmutableArray<ImmutableArray<string>> sets) => AnyOf([.. sets.Select(set => Required(set))]);

    private static JsonObject AnyOf(params JsonObject[] schemas) => schemas.Length == 1 ? schemas[0] : new JsonObject { ["anyOf"] = new JsonArray([.. schemas]) };

    private static JsonObject Required(IEnumerable<string> keys) => new() { ["required"] = Texts(keys) };

    private static JsonObject Reference(string name) => new() { ["$ref"] = $"#/$defs/{name}" };

    private static JsonArray Texts(IEnumerable<string> texts) => new([.. texts.Select(text => (JsonNode)text)]);
}
