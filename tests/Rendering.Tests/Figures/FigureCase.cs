using System.Globalization;
using Witnessmark.Harness;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Rendering.Tests.Figures;

/// <summary>What is to be drawn, as a mechanic would say it: a title, then a word and its value a line.</summary>
public sealed class FigureCase
{
    /// <summary>Words whose value is a name, and columns of rows that are.</summary>
    private static readonly string[] Free = ["load", "gear", "inside", "wrench", "adapter", "from", "to", "clearance", "of", "asked"];
    private static readonly (string, int)[] InRows = [("part", 1), ("outcome", 0), ("outcome", 1), ("outcome", 3), ("step", 1), ("in", 0), ("state", 0)];

    private readonly ILookup<string, string> _said;

    private FigureCase(string name, IEnumerable<string> lines)
    {
        Name = name;
        _said = lines.Where(l => !l.StartsWith('#')).Select(l => l.Split(": ", 2)).Where(p => p.Length == 2).ToLookup(p => p[0].Trim(), p => p[1].Trim());
    }

    public static IEnumerable<string> Names =>
        Directory.EnumerateFiles(Repo.Path("tests", "Rendering.Tests", "Figures", "Cases"), "*.txt").Select(f => Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal);

    public string Name { get; }

    public Words Words => Words.Of(Maybe("language"));

    public static FigureCase Read(string name) => new(name, Repo.Read("tests", "Rendering.Tests", "Figures", "Cases", $"{name}.txt").Split('\n'));

    public static FigureCase Of(string name, params string[] lines) => new(name, lines);

    /// <summary>The same with every name in it replaced by something that nobody should write; numbers stay.</summary>
    public FigureCase With(string name) =>
        new(Name, _said.SelectMany(g => g.Select(value => $"{g.Key}: {(Free.Contains(g.Key) ? name : string.Join(" | ", value.Split(" | ").Select((v, i) => InRows.Contains((g.Key, i)) ? name : v)))}")));

    public string this[string word] => _said[word].FirstOrDefault() ?? throw new ArgumentException($"{Name} does not say {word}");

    public string? Maybe(string word) => _said[word].FirstOrDefault();

    public IEnumerable<string> Each(string word) => _said[word];

    public bool Says(string word) => _said.Contains(word);

    public int Count(string word) => int.Parse(this[word], CultureInfo.InvariantCulture);

    public static Quantity Q(string text) => QuantityReader.Quantity(text) is { Ok: true } read ? read.Value : throw new ArgumentException(text);

    public static decimal Number(string text) => decimal.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);
}
