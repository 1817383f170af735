using Witnessmark.Records.Hashing;

namespace Witnessmark.Records.Issuing;

/// <summary>In which words a translated copy is printed: <c>es 6A89 FCB9 9BC8</c>, at its foot and in its blank. A copy in the original's words has none.</summary>
/// <param name="Language">es</param>
/// <param name="Digits">The first twelve of their hash.</param>
public sealed record CopyWords(string Language, string Digits)
{
    public static CopyWords Of(string language, string hex) => new(language, ShortHash.Plain(hex));

    /// <summary>As it was typed, whatever stands there.</summary>
    public static CopyWords Read(string typed)
    {
        var parts = typed.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        return new CopyWords(parts.FirstOrDefault("").ToLowerInvariant(), string.Concat(parts.Skip(1)).ToUpperInvariant());
    }

    public bool AreOf(string hex) => Digits.Length is >= ShortHash.Digits and <= 64 && hex.StartsWith(Digits, StringComparison.OrdinalIgnoreCase);

    public override string ToString() => $"{Language} {ShortHash.Of(Digits)}";
}
