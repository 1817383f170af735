namespace Witnessmark.Language.Text;

/// <summary>A file's text and the path it is known by in the workshop (relative, with forward slashes).</summary>
public sealed class SourceText
{
    // only findings and sheets ask for lines, and most texts have none
    private readonly Lazy<int[]> _lineStarts;

    public SourceText(string path, string content)
    {
        Path = path;
        Content = content;
        _lineStarts = new Lazy<int[]>(() => FindLineStarts(content));
    }

    public string Path { get; }

    public string Content { get; }

    public int LineCount => LineStarts.Length;

    private int[] LineStarts => _lineStarts.Value;

    /// <summary>Line and column of an offset, both counted from 1. The only place in the house that adds the 1.</summary>
    public LineColumn PositionOf(int offset)
    {
        var line = LineOf(offset);
        return new LineColumn(line + 1, offset - LineStarts[line] + 1);
    }

    /// <summary>The text of a line (counted from 1) without its line end.</summary>
    public string Line(int number)
    {
        var start = LineStarts[number - 1];
        var end = number < LineStarts.Length ? LineStarts[number] : Content.Length;
        return Content[start..end].TrimEnd('\r', '\n');
    }

    /// <summary>Offset of the first character of a line (counted from 1).</summary>
    public int StartOfLine(int number) => LineStarts[number - 1];

    public string Slice(TextSpan span) => Content[span.Start..span.End];

    public Location At(int start, int end) => new(this, new TextSpan(start, end));

    public override string ToString() => Path;

    private int LineOf(int offset)
    {
        var found = Array.BinarySearch(LineStarts, Math.Clamp(offset, 0, Content.Length));
        return found >= 0 ? found : ~found - 1;
    }

    private static int[] FindLineStarts(string content)
    {
        var starts = new List<int> { 0 };
        for (var i = 0; i < content.Length; i++)
            if (content[i] == '\n')
                starts.Add(i + 1);
        return [.. starts];
    }
}

/// <summary>A place in a text as people count: from 1.</summary>
public readonly record struct LineColumn(int Line, int Column);
