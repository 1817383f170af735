using System.Collections.Immutable;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Witnessmark.Reading.Data;

/// <summary>Events to nodes. After a fault that leaves no tree every method returns null.</summary>
internal sealed class TreeBuilder(SourceText source, TextSpan span, FindingList findings)
{
    private readonly string _text = source.Slice(span);
    private readonly Parser _parser = new(new StringReader(source.Slice(span)));
    private int _lastGood;
    private int _nodes;
    private bool _broken;

    private ParsingEvent Event => _parser.Current!;

    /// <summary>Null when nothing can be read; then there is a finding that says why.</summary>
    public DataNode? Root()
    {
        var root = First();
        // behind a line that begins with a colon the parser ends in the middle of a map, and says nothing
        if (root is null && !_broken)
            findings.Add(YamlTrouble.HalfRead(source, span, span.Start + _lastGood));
        return root;
    }

    private DataNode? First()
    {
        while (Next())
            if (Event is NodeEvent or AnchorAlias)
                return Node(1) is { } root && EndsHere() ? root : null;
        return _broken ? null : Refuse(YamlSigns.Nothing(At(0, 0)));
    }

    /// <summary>The node that begins at the current event; leaves the current event at the node's last one.</summary>
    private DataNode? Node(int level)
    {
        var start = Start(Event);
        if (++_nodes > YamlTree.MostNodes)
            return Refuse(YamlSigns.TooMuch(At(start, start)));
        if (level > YamlTree.DeepestLevel)
            return Refuse(YamlSigns.TooDeep(At(start, Math.Min(start + 1, _text.Length))));
        ReportTagOrAnchor(Event);
        return Event switch
        {
            Scalar scalar => Text(scalar),
            AnchorAlias alias => Alias(alias),
            SequenceStart list => List(list, level),
            MappingStart map => Map(map, level),
            _ => null,
        };
    }

    private DataText Text(Scalar scalar)
    {
        var (start, end) = (Start(scalar), (int)scalar.End.Index);
        // a block text counts the line ends behind it as its own
        while (end > start && char.IsWhiteSpace(_text[end - 1]))
            end--;
        if (scalar.Style == ScalarStyle.Plain)
            YamlSigns.ReportLostWords(source, span, span.Start + end, findings);
        if (scalar.Style == ScalarStyle.DoubleQuoted && scalar.Value.Any(c => c == '\r' || Decode.IsUnseen(c)))
            findings.Add(YamlSigns.HiddenByEscape(At(start, end), scalar.Value.First(c => c == '\r' || Decode.IsUnseen(c))));
        return new DataText(scalar.Style is ScalarStyle.Literal or ScalarStyle.Folded ? scalar.Value.TrimEnd('\n') : scalar.Value, At(start, end));
    }

    private DataText Alias(AnchorAlias alias)
    {
        var at = At(Start(alias), (int)alias.End.Index);
        findings.Add(YamlSigns.Anchor(at));
        return new DataText(at.Text, at);
    }

    private DataList? List(SequenceStart start, int level)
    {
        var items = ImmutableArray.CreateBuilder<DataNode>();
        while (Next())
        {
            if (Event is SequenceEnd)
                return new DataList(items.ToImmutable(), Whole(start, start.Style == SequenceStyle.Flow, items.Count > 0 ? items[^1].At : null));
            if (Node(level + 1) is not { } item)
                return null;
            items.Add(item);
        }
        return null;
    }

    private DataNode? Map(MappingStart start, int level)
    {
        var entries = new Entries();
        while (Next())
        {
            if (Event is MappingEnd)
                return Finish(start, entries);
            if (Node(level + 1) is not { } key || !Next() || Node(level + 1) is not { } value)
                return null;
            if (key is DataText text)
                entries.Keep(new DataEntry(new Located<string>(text.Text, text.At), value), findings);
            else
                findings.Add(YamlSigns.KeyIsNoWord(key.At));
        }
        return null;
    }

    private DataNode Finish(MappingStart start, Entries kept)
    {
        var flow = start.Style == MappingStyle.Flow;
        var entries = kept.All;
        var at = Whole(start, flow, entries.Count > 0 ? entries[^1].Value.At : null);
        if (!flow || entries.Find(e => e.Value is DataText { Text: "", At.Span.Length: 0 }) is not { } empty)
            return new DataMap([.. entries], at);
        findings.Add(YamlSigns.Braces(at, empty.Key));
        // {group} alone was meant as a text; beside real keys the rest still counts
        return entries.Count == 1 ? new DataText(at.Text, at) : new DataMap([.. entries.Where(e => e != empty)], at);
    }

    private void ReportTagOrAnchor(ParsingEvent e)
    {
        // an alias is reported as what it is
        if (e is AnchorAlias || e is not NodeEvent node)
            return;
        if (node.Anchor.IsEmpty && node.Tag.IsEmpty)
            return;
        var start = Start(node);
        var end = start;
        while (end < _text.Length && !char.IsWhiteSpace(_text[end]))
            end++;
        findings.Add(start < end && _text[start] == '!' ? YamlSigns.Tag(At(start, end)) : YamlSigns.Anchor(At(start, end)));
    }

    /// <summary>True when nothing follows the root but the end.</summary>
    private bool EndsHere()
    {
        while (Next())
        {
            if (Event is StreamEnd)
                return true;
            if (Event is DocumentStart second)
            {
                findings.Add(YamlSigns.SecondDocument(At(Start(second), (int)second.End.Index)));
                return true;
            }
        }
        return false;
    }

    private bool Next()
    {
        try
        {
            if (!_parser.MoveNext())
                return false;
            _lastGood = Math.Max(_lastGood, Start(Event));
            return true;
        }
        catch (YamlException broken)
        {
            // some faults are reported at line 1, column 1 whatever their place
            var mark = (int)broken.Start.Index;
            Unreadable(mark == 0 ? _lastGood : mark);
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            // an unclosed bracket before the next key, or a tag that is no address: the parser gives no place at all
            Unreadable(_lastGood);
        }
        return false;
    }

    private void Unreadable(int mark)
    {
        findings.Add(YamlTrouble.Explain(source, span, span.Start + _lastGood, span.Start + mark));
        _broken = true;
    }

    private Location Whole(ParsingEvent start, bool flow, Location? last) =>
        flow ? At(Start(start), Math.Min((int)Event.Start.Index + 1, _text.Length))
        : last is { } node ? At(Start(start), node.Span.End - span.Start)
        : At(Start(start), (int)start.End.Index);

    private DataNode? Refuse(Finding finding)
    {
        findings.Add(finding);
        _broken = true;
        return null;
    }

    private int Start(ParsingEvent e) => Math.Min((int)e.Start.Index, _text.Length);

    private Location At(int start, int end) => source.At(span.Start + start, span.Start + Math.Max(start, end));
}
