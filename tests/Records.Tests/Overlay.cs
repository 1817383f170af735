using System.Text;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;

namespace Witnessmark.Records.Tests;

/// <summary>A whole sign-off with the lines of an example laid over it: other keys of the head, other values of an entry.</summary>
internal static class Overlay
{
    public static string Of(string whole, string example)
    {
        var text = new StringBuilder();
        Write(text, Merge(Tree(whole), Tree(example)), 0);
        return text.ToString();
    }

    private static DataMap Tree(string yaml)
    {
        var findings = new FindingList();
        var source = new SourceText("example.yaml", yaml);
        var map = YamlTree.Read(source, new TextSpan(0, yaml.Length), findings);
        Assert.Empty(findings.InReadingOrder().Select(f => f.Found));
        return map!;
    }

    private static DataMap Merge(DataMap whole, DataMap over)
    {
        var entries = whole.Entries.Select(e => over.Find(e.Key.Value) is { } o ? e with { Value = Merge(e.Key.Value, e.Value, o.Value) } : e);
        var added = over.Entries.Where(o => whole.Find(o.Key.Value) is null);
        return new DataMap([.. entries, .. added], whole.At);
    }

    private static DataNode Merge(string key, DataNode whole, DataNode over) => (whole, over) switch
    {
        (DataList w, DataList o) when key == "entries" => Entries(w, o),
        // rows of a grid and the lines of an entry one by one; everything else is taken as the example has it
        (DataMap w, DataMap o) when key is "entry" || key.EndsWith("-thickness", StringComparison.Ordinal) => Merge(w, o),
        _ => over,
    };

    private static DataList Entries(DataList whole, DataList over)
    {
        var items = whole.Items.ToList();
        var laid = new HashSet<string>(StringComparer.Ordinal);
        foreach (var entry in over.Items.OfType<DataMap>())
        {
            var at = items.FindIndex(i => Step(i) == Step(entry));
            // an example with a step twice means twice
            if (at < 0 || !laid.Add(Step(entry)))
                items.Add(entry);
            else
                items[at] = Merge("entry", items[at], entry);
        }
        return new DataList([.. items], whole.At);
    }

    private static string Step(DataNode entry) => ((DataText)((DataMap)entry).Find("step")!.Value).Text;

    private static void Write(StringBuilder text, DataNode node, int depth)
    {
        switch (node)
        {
            case DataText scalar:
                text.Append(" \"").Append(scalar.Text).Append("\"\n");
                break;
            case DataMap map:
                text.Append('\n');
                foreach (var entry in map.Entries)
                {
                    text.Append(' ', depth).Append(entry.Key.Value).Append(':');
                    Write(text, entry.Value, depth + 2);
                }
                break;
            case DataList list:
                text.Append('\n');
                foreach (var item in list.Items)
                {
                    text.Append(' ', depth).Append('-');
                    Write(text, item, depth + 2);
                }
                break;
        }
    }
}
