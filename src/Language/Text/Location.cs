namespace Witnessmark.Language.Text;

/// <summary>A span in a source.</summary>
public readonly record struct Location(SourceText Source, TextSpan Span)
{
    public LineColumn Start => Source.PositionOf(Span.Start);

    public string Text => Source.Slice(Span);

    /// <summary>The same without a copy.</summary>
    public ReadOnlySpan<char> Signs => Source.Content.AsSpan(Span.Start, Span.Length);

    /// <summary>A part of this location: <paramref name="start"/> and <paramref name="end"/> count from its own start.</summary>
    public Location Part(int start, int end) => new(Source, new TextSpan(Span.Start + start, Math.Min(Span.Start + end, Span.End)));

    /// <summary>This location without the blanks at its ends.</summary>
    public Location Trimmed()
    {
        var signs = Signs;
        var start = signs.Length - signs.TrimStart().Length;
        return start == signs.Length ? Part(start, start) : Part(start, signs.TrimEnd().Length);
    }
}

/// <summary>A value and where it was written.</summary>
public readonly record struct Located<T>(T Value, Location At)
{
    public Located<TOther> As<TOther>(TOther value) => new(value, At);

    public override string ToString() => $"{Value}";
}
