using System.Text.Json.Nodes;
using Witnessmark.Language.Quantities;
using Witnessmark.Reading.Data;

namespace Witnessmark.Reading.Shapes;

/// <summary>Single values as JSON Schema.</summary>
/// <param name="shared">Takes what is used in several places.</param>
internal sealed class FormSchemas(JsonObject shared)
{
    /// <summary>Where a plain number is a text too, for those who load it as a number.</summary>
    private static JsonArray TextOrNumber => ["string", "number"];

    public JsonObject Of(Form form) => form switch
    {
        NameForm => Shared("name", () => Text("a name that conditions and steps can quote", Names.Pattern)),
        IdForm => Shared("id", () => Text("a name that files can have", Names.FilePattern)),
        WordForm word => new JsonObject { ["enum"] = new JsonArray([.. word.Words.Select(w => (JsonNode)w)]) },
        CountForm count => Count(count),
        FactorForm => Shared("factor", Factor),
        SizeForm { Or: { } or } size => new JsonObject { ["anyOf"] = new JsonArray(Of(size with { Or = null }), new JsonObject { ["type"] = "string", ["pattern"] = or }) },
        SizeForm size => Size(size),
        SpelledForm spelled => Shared(spelled.Name.Replace(' ', '-'), () => Spelled(spelled)),
        _ => new JsonObject { ["type"] = TextOrNumber, ["minLength"] = 1 },
    };

    private JsonObject Size(SizeForm size)
    {
        var name = $"{Noun(size.Size)}{(size.Kind is { } kind ? $"-of-{kind.Replace(' ', '-')}" : "")}{Suffix(size.Least)}";
        return size.Kind is not null
            ? Shared(name, () => Quantity(size, size.Kind))
            : Shared(name, () => new JsonObject { ["anyOf"] = new JsonArray([.. QuantityPatterns.Kinds.Select(kind => Size(size with { Kind = kind }))]) });
    }

    private static JsonObject Quantity(SizeForm size, string kind) => new()
    {
        ["title"] = size.Size is Shapes.Size.Share or Shapes.Size.Shares ? Noun(size.Size) : $"{Noun(size.Size)} ({kind})",
        ["type"] = "string",
        ["maxLength"] = QuantityPatterns.LongestText,
        ["pattern"] = size.Size switch
        {
            Shapes.Size.Quantity => QuantityPatterns.Quantity(kind, size.Least),
            Shapes.Size.Toleranced => QuantityPatterns.Toleranced(kind, size.Least),
            Shapes.Size.Range => QuantityPatterns.Range(kind),
            Shapes.Size.Share => QuantityPatterns.Share,
            _ => QuantityPatterns.RangeOfTwoEnds(kind),
        },
    };

    private static string Noun(Size size) => size switch
    {
        Shapes.Size.Quantity => "quantity",
        Shapes.Size.Toleranced => "quantity-with-tolerance",
        Shapes.Size.Range => "range",
        Shapes.Size.Share => "share",
        _ => "range-with-two-ends",
    };

    private static string Suffix(LeastSize least) => least switch
    {
        LeastSize.Zero => "-or-zero",
        LeastSize.AboveZero => "-above-zero",
        _ => "",
    };

    private static JsonObject Count(CountForm count) => new()
    {
        ["type"] = new JsonArray("string", "integer"),
        ["minimum"] = count.Least,
        ["maximum"] = count.Most,
        ["pattern"] = $"^{(count.Before is { } word ? $@"(?:{word}\s*)?" : "")}{WholeNumbers.Pattern(count.Least, count.Most)}$",
    };

    private static JsonObject Factor() => new()
    {
        ["title"] = "a number above zero, without a unit",
        ["type"] = TextOrNumber,
        ["exclusiveMinimum"] = 0,
        ["maxLength"] = Fields.LongestFactor,
        ["pattern"] = @"^(?=[0-9.]*[1-9])(?:[0-9]+\.?[0-9]*|\.[0-9]+)$",
    };

    private static JsonObject Text(string title, string pattern) => new() { ["title"] = title, ["type"] = TextOrNumber, ["pattern"] = pattern };

    private static JsonObject Spelled(SpelledForm spelled) => new() { ["title"] = spelled.Name, ["type"] = "string", ["pattern"] = spelled.Pattern() };

    private JsonObject Shared(string name, Func<JsonObject> make)
    {
        if (!shared.ContainsKey(name))
        {
            shared[name] = null;
            shared[name] = make();
        }
        return new JsonObject { ["$ref"] = $"#/$defs/{name}" };
    }
}
