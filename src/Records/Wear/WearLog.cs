using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Records.Receiving;

namespace Witnessmark.Records.Wear;

/// <summary>What the sign-offs that came back say of parts that wear, and which of them say nothing.</summary>
public sealed record WearLog(ImmutableArray<WornReading> Readings, ImmutableArray<LeftOutRecord> LeftOut)
{
    public static readonly WearLog None = new([], []);
}

/// <summary>One reading of worn parts, from a sign-off that is complete.</summary>
/// <param name="Machine">Id of its data sheet.</param>
/// <param name="Part">Has a <see cref="PartKind.WornAt"/>.</param>
/// <param name="Hours">Of the machine, from the head of the sign-off, in h.</param>
/// <param name="Value">The value that was judged; of readings that are judged one by one the least.</param>
/// <param name="Record">What the sign-off is called.</param>
/// <param name="Copy">Set mark of the copy that it was typed from.</param>
public sealed record WornReading(
    string Machine, string Unit, string Place, PartKind Part, ReadingItem Reading, decimal Hours, Quantity Value, string Record, string Copy);

/// <param name="Machine">Id of the data sheet of its procedure; null when the record does not say which.</param>
/// <param name="State">What became of it; a complete one is left out when it is no further evidence.</param>
/// <param name="Why">One sentence.</param>
public sealed record LeftOutRecord(string Path, string? Machine, ReceptionState State, string Why);
