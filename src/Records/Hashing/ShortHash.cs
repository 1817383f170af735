namespace Witnessmark.Records.Hashing;

/// <summary>A hash as it is printed and typed: its first twelve digits. One in 2⁴⁸ others begins alike.</summary>
public static class ShortHash
{
    public const int Digits = 12;
    private const int Group = 4;

    /// <summary><c>3F9A C21B 77DE</c></summary>
    public static string Of(string hex) => string.Join(' ', Plain(hex).Chunk(Group).Select(c => new string(c)));

    /// <summary><c>3F9AC21B77DE</c></summary>
    public static string Plain(string hex) => hex[..Math.Min(Digits, hex.Length)].ToUpperInvariant();
}
