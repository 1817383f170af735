using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Tags;

/// <summary>What hangs, sticks or lies where the hand is while one sheet is worked: all of it follows from the steps and the data sheet.</summary>
public sealed record TagPlan(
    ImmutableArray<DeviceStay> Devices,
    ImmutableArray<DrainedSpace> Drained,
    ImmutableArray<PartBag> PartBags,
    ImmutableArray<FastenerGroup> BoltBags,
    ImmutableArray<Pile> Piles,
    ImmutableArray<DebtValue> Owed)
{
    public bool IsEmpty => Devices.IsEmpty && Drained.IsEmpty && PartBags.IsEmpty && BoltBags.IsEmpty && Piles.IsEmpty && Owed.IsEmpty;

    /// <summary>Tags of the devices that block something: <c>engine-start</c>.</summary>
    public ImmutableArray<string> Blocking(string what) =>
        [.. Devices.Where(d => d.Kind.Blocks.Any(b => b.Value == what)).Select(d => d.Tag)];
}

/// <summary>A device from when it goes in until it comes out.</summary>
/// <param name="In">The step that places it; null: it is in before the first step.</param>
/// <param name="Out">The step that takes it out for good; null: it stays in after the last step.</param>
public sealed record DeviceStay(DeviceKind Kind, string Tag, StepCode? In, StepCode? Out);

/// <param name="Container">What it drains into, when the tool list has it.</param>
public sealed record DrainedSpace(FluidSpace Space, Container? Container, StepCode Step);

/// <summary>A part that is taken out and measured in one step, and goes into a bag with its readings on it: a shim pack.</summary>
public sealed record PartBag(PartKind Part, ImmutableArray<ReadingAsk> Readings, StepCode Step);

/// <summary>A heap that parts are sorted to.</summary>
/// <param name="Outcome">The outcome of a decision that leads here; null: the reading alone decides.</param>
/// <param name="Keep">Whether the parts are used again; null: the outcome's own name says.</param>
/// <param name="Bands">Names of the reading's results that lead here; empty for an outcome.</param>
public sealed record Pile(PartKind Part, ReadingItem Reading, OutcomeValue? Outcome, bool? Keep, ImmutableArray<ReadingBand> Bands, SheetStep Step);
