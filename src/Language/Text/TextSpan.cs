namespace Witnessmark.Language.Text;

/// <summary>A run of characters, from <paramref name="Start"/> up to but not including <paramref name="End"/>.</summary>
public readonly record struct TextSpan(int Start, int End)
{
    public int Length => End - Start;

    public static TextSpan Of(int start, int length) => new(start, start + length);

    /// <summary>The shortest span that holds both.</summary>
    public TextSpan Cover(TextSpan other) => new(Math.Min(Start, other.Start), Math.Max(End, other.End));
}
