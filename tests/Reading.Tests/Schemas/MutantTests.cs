using System.Text.Json.Nodes;

namespace Witnessmark.Reading.Tests.Schemas;

/// <summary>
/// One slip at a time at every key of the showcase: whatever the reader finds wrong in a shape the schema refuses, and nothing else.
/// </summary>
public sealed class MutantTests
{
    private static readonly string[] Alphabet = ["a text of no kind", "7", "0.5", "-3 mm", "455 N·m", "2.8 to 3.6 mm", "75 %", "none", "a, b", "1.2.0", "from 0200", ""];

    public static TheoryData<string> Files => [.. WrittenFile.All.Where(f => f.Path.StartsWith("procedures/", StringComparison.Ordinal)).Select(f => f.Path)];

    [Theory]
    [MemberData(nameof(Files))]
    public void A_key_that_is_gone_misspelt_or_holds_something_else_is_seen_by_both_or_by_neither(string path)
    {
        var file = WrittenFile.All.Single(f => f.Path == path);
        var data = file.Load()!;
        var schema = file.Schema(data)!;
        var (taken, refused) = (0, 0);
        foreach (var (slip, mutant) in Pieces(WrittenFile.AsText(data).AsObject()).SelectMany(Mutants).DistinctBy(m => m.Mutant.ToJsonString()))
        {
            var found = QuotedYaml.Findings(mutant, schema).Where(f => !Unseen.Contains(f)).ToList();
            var takes = Validator.Takes(schema, mutant);
            Assert.True(takes == (found.Count == 0), $"{slip}: the reader says {(found.Count == 0 ? "nothing" : string.Join(", ", found))}, the schema {(takes ? "takes it" : $"refuses it at {string.Join(" ", Validator.Refused(schema, mutant))}")}");
            _ = takes ? taken++ : refused++;
        }
        TestContext.Current.TestOutputHelper?.WriteLine($"{taken} slips taken by both, {refused} refused by both");
        Assert.True(taken > 0 && refused > 10);
    }

    /// <summary>What compares two numbers, which a schema cannot; a first key that is gone makes another kind of file.</summary>
    private static readonly string[] Unseen = ["range-backward", "file-unknown"];

    /// <summary>The file in files that have one thing of one section each, so that a slip is tried in little text.</summary>
    private static IEnumerable<JsonObject> Pieces(JsonObject whole)
    {
        var plain = whole.Where(e => e.Value is JsonValue || e.Key == "entries").Select(e => KeyValuePair.Create(e.Key, e.Key == "entries" ? new JsonArray(e.Value![0]!.DeepClone()) : e.Value!.DeepClone())).ToList();
        JsonObject With(string key, JsonNode? value)
        {
            var piece = new JsonObject(plain.Select(e => KeyValuePair.Create(e.Key, (JsonNode?)e.Value.DeepClone())));
            piece[key] = value;
            return piece;
        }
        foreach (var (key, value) in whole.Where(e => e.Value is not JsonValue))
            foreach (var one in value is JsonArray list ? list.Select(item => (JsonNode)new JsonArray(item!.DeepClone())) : value!.AsObject().Select(e => new JsonObject { [e.Key] = e.Value!.DeepClone() }))
                yield return With(key, one);
    }

    private static IEnumerable<(string Slip, JsonObject Mutant)> Mutants(JsonObject whole)
    {
        var dice = 0;
        foreach (var (path, key) in Keys(whole, []))
        {
            yield return ($"{Shown(path, key)} is gone", Changed(whole, path, map => map.Remove(key)));
            yield return ($"{Shown(path, key)} is misspelt", Changed(whole, path, map => Renamed(map, key, key + "x")));
            var other = Alphabet[dice++ % Alphabet.Length];
            yield return ($"{Shown(path, key)} is `{other}`", Changed(whole, path, map => map[key] = other));
            yield return ($"{Shown(path, key)} is a list", Changed(whole, path, map => map[key] = new JsonArray("a", other.Length == 0 ? "b" : other)));
            yield return ($"{Shown(path, key)} has keys", Changed(whole, path, map => map[key] = new JsonObject { ["a"] = "b" }));
        }
    }

    private static string Shown(object[] path, string key) => $"/{string.Join('/', path)}/{key}";

    /// <summary>All keys but the first of the file, which says what it is.</summary>
    private static IEnumerable<(object[] Path, string Key)> Keys(JsonNode? node, object[] path) => node switch
    {
        JsonObject map => map.Skip(path.Length == 0 ? 1 : 0).SelectMany(e => Keys(e.Value, [.. path, e.Key]).Prepend((path, e.Key))),
        JsonArray list => list.SelectMany((item, i) => Keys(item, [.. path, i])),
        _ => [],
    };

    private static JsonObject Changed(JsonObject whole, object[] path, Action<JsonObject> change)
    {
        var copy = whole.DeepClone().AsObject();
        JsonNode at = copy;
        foreach (var step in path)
            at = step is int i ? at[i]! : at[(string)step]!;
        change(at.AsObject());
        return copy;
    }

    private static void Renamed(JsonObject map, string key, string to)
    {
        var entries = map.ToList();
        map.Clear();
        foreach (var (name, value) in entries)
            map[name == key ? to : name] = value;
    }
}
