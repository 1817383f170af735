using Witnessmark.Records.Hashing;

namespace Witnessmark.Records.Issuing;

/// <summary>What one printed copy is for.</summary>
/// <param name="IssuedAt">With its offset: <c>2031-06-11T06:40:00+02:00</c>.</param>
public sealed record CopyIdentity(ProcedureHash Hash, string Unit, string Serial, string Place, string IssuedAt, string IssuedBy)
{
    /// <summary>Null in the original's own words.</summary>
    public CopyWords? Words { get; init; }

    /// <summary>The part that the sheet is of; null where the procedure is done in one. Parts of one procedure are copies of their own.</summary>
    public string? Part { get; init; }

    /// <summary>In the corner of every page; empty until it has one.</summary>
    public string Mark { get; init; } = "";

    /// <summary>The lines that its mark is worked out from.</summary>
    public string[] Lines =>
    [
        Hash.Hex, Unit, Serial, Place, IssuedAt, IssuedBy,
        .. Words is { } words ? new[] { words.ToString() } : [],
        .. Part is { } part ? new[] { $"part {part}" } : [],
    ];
}
