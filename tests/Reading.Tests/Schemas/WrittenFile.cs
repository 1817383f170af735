using System.Text;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Witnessmark.Harness;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Records;
using YamlDotNet.Core;
using YamlDotNet.RepresentationModel;

namespace Witnessmark.Reading.Tests.Schemas;

/// <summary>A file of a workshop: its data as a loader hands it over that takes every scalar for text, and what our reader finds in it.</summary>
/// <param name="Path">From the top of the repository.</param>
/// <param name="Text">The whole file.</param>
internal sealed partial record WrittenFile(string Path, string Text)
{
    private static readonly Dictionary<string, string> Schemas = new(StringComparer.Ordinal)
    {
        ["workshop"] = "workshop", ["machine"] = "machine", ["tools"] = "tools", ["translates"] = "translation", ["register"] = "register", ["record"] = "sign-off",
    };

    /// <summary>Every file with data in the showcase and in the tests; what is no file of a workshop is left out.</summary>
    public static IReadOnlyList<WrittenFile> All { get; } =
    [
        .. new[] { "procedures", "tests" }.SelectMany(top => Directory.EnumerateFiles(Repo.Path(top), "*", SearchOption.AllDirectories))
            .Select(path => System.IO.Path.GetRelativePath(Repo.Root, path).Replace('\\', '/'))
            .Where(path => (path.EndsWith(".md", StringComparison.Ordinal) || path.EndsWith(".yaml", StringComparison.Ordinal)) && !path.Contains("/bin/", StringComparison.Ordinal) && !path.Contains("/obj/", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
            .Select(path => new WrittenFile(path, Marker().Replace(File.ReadAllText(Repo.Path(path)), ""))),
    ];

    public bool IsProcedure => Path.EndsWith(".md", StringComparison.Ordinal);

    /// <summary>The whole file, or what stands between the dashes.</summary>
    public string Data => !IsProcedure ? Text : FrontMatter().Match(Text).Groups["data"].Value;

    /// <summary>Lines above the data.</summary>
    public int LinesAbove => IsProcedure ? 1 : 0;

    /// <summary>The schema that the first telling key asks for; null when there is none.</summary>
    public string? Schema(YamlMappingNode data)
    {
        var keys = data.Children.Keys.Select(k => ((YamlScalarNode)k).Value!).ToList();
        return IsProcedure && !keys.Contains("translates") ? "front-matter" : keys.Where(Schemas.ContainsKey).Select(k => Schemas[k]).FirstOrDefault();
    }

    /// <summary>Null when a loader takes it for no YAML, or for no map.</summary>
    public YamlMappingNode? Load()
    {
        try
        {
            var stream = new YamlStream();
            stream.Load(new StringReader(Data));
            return stream.Documents is [{ RootNode: YamlMappingNode map }, ..] ? map : null;
        }
        // behind a line that begins with a colon the loader loses its way
        catch (Exception broken) when (broken is YamlException or InvalidOperationException or ArgumentException)
        {
            return null;
        }
    }

    /// <summary>What our reader finds in the data; names are looked up elsewhere.</summary>
    public IReadOnlyList<Finding> Findings()
    {
        var findings = new FindingList();
        var file = RawFile.Of(System.IO.Path.GetFileName(Path), Encoding.UTF8.GetBytes(Text));
        if (Load() is { } map && Schema(map) == "sign-off")
            SignOffReader.Read(file, findings);
        else
            WorkshopReader.Read([file], findings);
        var last = LinesAbove + Data.Split('\n').Length;
        return [.. findings.InReadingOrder().Where(f => f.Rule.Name != "workshop-missing" && (!IsProcedure || f.At.Start.Line <= last))];
    }

    public static JsonNode AsText(YamlNode node) => node switch
    {
        YamlMappingNode map => new JsonObject(map.Children.Select(c => KeyValuePair.Create<string, JsonNode?>(((YamlScalarNode)c.Key).Value!, AsText(c.Value)))),
        YamlSequenceNode list => new JsonArray([.. list.Children.Select(AsText)]),
        _ => JsonValue.Create(((YamlScalarNode)node).Value ?? "")!,
    };

    /// <summary>As an editor hands it over: what looks like a number is one, what is empty is null.</summary>
    public static JsonNode? AsEditorsLoad(YamlNode node) => node switch
    {
        YamlMappingNode map => new JsonObject(map.Children.Select(c => KeyValuePair.Create(((YamlScalarNode)c.Key).Value!, AsEditorsLoad(c.Value)))),
        YamlSequenceNode list => new JsonArray([.. list.Children.Select(AsEditorsLoad)]),
        YamlScalarNode { Style: ScalarStyle.Plain, Value: null or "" } => null,
        YamlScalarNode { Style: ScalarStyle.Plain, Value: var plain } when PlainNumber().IsMatch(plain) => JsonValue.Create(decimal.Parse(plain, System.Globalization.CultureInfo.InvariantCulture)),
        _ => JsonValue.Create(((YamlScalarNode)node).Value ?? ""),
    };

    public override string ToString() => Path;

    [GeneratedRegex("# fault: [a-z0-9, -]+")]
    private static partial Regex Marker();

    [GeneratedRegex(@"\A---[ \t]*\r?\n(?<data>.*?)^---[ \t]*\r?$", RegexOptions.Singleline | RegexOptions.Multiline)]
    private static partial Regex FrontMatter();

    /// <summary>Numbers of the core schema of YAML 1.2.2, chapter 10.3.2, without hexadecimal and powers.</summary>
    [GeneratedRegex(@"\A[-+]?[0-9]+(\.[0-9]*)?\z")]
    private static partial Regex PlainNumber();
}
