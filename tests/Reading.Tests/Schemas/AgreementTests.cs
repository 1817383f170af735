using Witnessmark.Language.Findings;
using Witnessmark.Reading.Shapes;
using YamlDotNet.RepresentationModel;

namespace Witnessmark.Reading.Tests.Schemas;

/// <summary>Schema and reader, on every file of the showcase and of the tests.</summary>
public sealed class AgreementTests
{
    /// <summary>What is wrong with a file's shape. What is wrong with its bytes and its YAML a loader says before a schema is asked.</summary>
    private static readonly string[] OfShape =
    [
        "key-unknown", "key-missing", "name-unusable", "value-missing", "value-wrong-kind", "value-not-in-list",
        "quantity-without-unit", "unit-unknown", "unit-wrong-kind", "decimal-comma", "range-backward", "quantity-unreadable",
        "thread-unclear", "pass-impossible", "order-unclear", "met-by-unclear", "interlock-shape", "condition-unclear",
    ];

    /// <summary>Not in the words of a schema. Each is held to be still unseen, so that the list cannot grow old.</summary>
    private static readonly (string File, int Line, string Rule, string Reason)[] Unseen =
    [
        ("a-range-with-nothing-in-it", 2, "range-backward", "two serial numbers would have to be compared"),
        ("a-range-with-nothing-in-it", 6, "range-backward", "two numbers in one text would have to be compared"),
        ("a-thread-without-its-pitch", 6, "thread-unclear", "pitch and diameter would have to be compared"),
        ("an-inch-thread-that-is-none", 20, "thread-unclear", "threads to the inch stand in the table of the series"),
        ("an-inch-thread-that-is-none", 22, "thread-unclear", "threads to the inch stand in the table of the series"),
        ("an-inch-thread-that-is-none", 28, "thread-unclear", "a bolt of ten inches is a size too, only larger than any that is read"),
        ("an-inch-thread-that-is-none", 30, "thread-unclear", "which numbers there are stands in a table"),
        ("an-inch-thread-that-is-none", 32, "thread-unclear", "the two numbers of a fraction would have to be compared"),
        ("an-inch-thread-that-is-none", 34, "thread-unclear", "pitch and diameter would have to be compared"),
        ("an-inch-thread-that-is-none", 36, "thread-unclear", "the two numbers of a fraction would have to be compared"),
    ];

    private static readonly IReadOnlyDictionary<string, Held> Files = WrittenFile.All.Select(Held.Of).OfType<Held>().ToDictionary(f => f.File.Path, StringComparer.Ordinal);

    public static TheoryData<string> Good => [.. Files.Values.Where(f => f is { Findings.Count: 0, IsDoubtful: false }).Select(f => f.File.Path)];

    public static TheoryData<string> Bad => [.. Files.Values.Where(f => f.Findings.Count > 0).Select(f => f.File.Path)];

    [Fact]
    public void There_are_good_and_bad_files_of_every_kind()
    {
        Assert.Equal(FileSchemas.All.Select(s => s.Name).Order(StringComparer.Ordinal), Files.Values.Where(f => f.Findings.Count == 0).Select(f => f.Schema).Distinct().Order(StringComparer.Ordinal));
        Assert.True(Files.Values.Count(f => f.Findings.Count > 0) > 20);
        Assert.All(Unseen, u => Assert.Contains($"tests/Reading.Tests/Cases/Data/{u.File}.yaml", Files.Keys));
    }

    [Theory]
    [MemberData(nameof(Good))]
    public void What_the_reader_takes_the_schema_takes(string path)
    {
        var (_, data, schema, _, _) = Files[path];
        Assert.Empty(Validator.Refused(schema, WrittenFile.AsText(data)));
    }

    [Theory]
    [MemberData(nameof(Good))]
    public void An_editor_that_loads_numbers_as_numbers_marks_nothing_in_a_good_file(string path)
    {
        var (_, data, schema, _, _) = Files[path];
        Assert.Empty(Validator.Refused(schema, WrittenFile.AsEditorsLoad(data)!));
    }

    [Theory]
    [MemberData(nameof(Bad))]
    public void What_the_reader_finds_in_a_shape_the_schema_refuses_at_the_same_line(string path)
    {
        var (file, data, schema, findings, _) = Files[path];
        var lines = Validator.Refused(schema, WrittenFile.AsText(data)).SelectMany(at => LinesOf(data, at)).Select(line => line + file.LinesAbove).ToHashSet();
        var found = findings.Where(f => !lines.Contains(f.At.Start.Line)).Select(f => $"{f.At.Start.Line}: {f.Rule.Name}");
        Assert.Equal(Unseen.Where(u => path.EndsWith($"/{u.File}.yaml", StringComparison.Ordinal)).Select(u => $"{u.Line}: {u.Rule}"), found);
    }

    /// <summary>Lines of the key and of the value at a path of keys.</summary>
    private static IEnumerable<int> LinesOf(YamlMappingNode root, string path)
    {
        YamlNode node = root;
        var key = root.Start.Line;
        foreach (var step in path.Split('/').Skip(1).Select(s => s.Replace("~1", "/", StringComparison.Ordinal).Replace("~0", "~", StringComparison.Ordinal)))
            if (node is YamlMappingNode map)
            {
                var entry = map.Children.First(c => ((YamlScalarNode)c.Key).Value == step);
                (key, node) = (entry.Key.Start.Line, entry.Value);
            }
            else
                (key, node) = (((YamlSequenceNode)node).Children[int.Parse(step, System.Globalization.CultureInfo.InvariantCulture)].Start.Line, ((YamlSequenceNode)node).Children[int.Parse(step, System.Globalization.CultureInfo.InvariantCulture)]);
        return [(int)key, (int)node.Start.Line];
    }

    /// <param name="IsDoubtful">Whether the reader has found something in the YAML itself, so that a loader has read something else.</param>
    private sealed record Held(WrittenFile File, YamlMappingNode Data, string Schema, IReadOnlyList<Finding> Findings, bool IsDoubtful)
    {
        public static Held? Of(WrittenFile file)
        {
            if (file.Load() is not { } data || file.Schema(data) is not { } schema)
                return null;
            var all = file.Findings();
            return new Held(
                file,
                data,
                schema,
                [.. all.Where(f => OfShape.Contains(f.Rule.Name))],
                all.Any(f => f.Rule.Name.StartsWith("yaml-", StringComparison.Ordinal) || f.Rule.Name.StartsWith("text-", StringComparison.Ordinal) || f.Rule.Name == "key-twice"));
        }
    }
}