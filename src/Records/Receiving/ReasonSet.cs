using System.Collections.Immutable;
using Witnessmark.Records.Receiving.Reasons;

namespace Witnessmark.Records.Receiving;

/// <summary>All reasons. To add one: its .cs, its .md beside it, a line here, a case file.</summary>
public static class ReasonSet
{
    /// <summary>Whether it is the right sheet at all. A fault here ends the holding.</summary>
    public static readonly ImmutableArray<Reason> Identity =
    [
        Reason.Of<ProcedureUnknown>(),
        Reason.Of<HashUnknown>(),
        Reason.Of<VersionDiffers>(),
        Reason.Of<VersionOutOfForce>(),
        Reason.Of<CopyUnknown>(),
        Reason.Of<CopyMarkWrong>(),
        Reason.Of<CopySpoiled>(),
        Reason.Of<WordsUnknown>(),
        Reason.Of<SerialNotCovered>(),
        Reason.Of<PlaceNotCovered>(),
        Reason.Of<HeadMissing>(),
    ];

    /// <summary>Whether the entries are what the sheet asks for.</summary>
    public static readonly ImmutableArray<Reason> Entries =
    [
        // which step
        Reason.Of<StepCodeWrong>(),
        Reason.Of<StepNotOnSheet>(),
        Reason.Of<EntryTwice>(),
        Reason.Of<EntryMissing>(),
        Reason.Of<EntryKeyUnknown>(),
        Reason.Of<EntryValueMissing>(),
        Reason.Of<EntryUnreadable>(),
        Reason.Of<NotDoneButDue>(),

        // readings
        Reason.Of<ReadingUnit>(),
        Reason.Of<ReadingImpossible>(),
        Reason.Of<ReadingOutside>(),
        Reason.Of<ReadingsTooFew>(),
        Reason.Of<ReadingsTooMany>(),
        Reason.Of<ReadingsIdentical>(),
        Reason.Of<ReadingsCopied>(),
        Reason.Of<DigitsTooMany>(),
        Reason.Of<DigitsLeftOff>(),
        Reason.Of<WorkedValueDiffers>(),
        Reason.Of<WorkedValueOutside>(),

        // counts, looks and tools
        Reason.Of<CountDiffers>(),
        Reason.Of<StackDiffers>(),
        Reason.Of<PassesDiffer>(),
        Reason.Of<VerdictUnknown>(),
        Reason.Of<VerdictBad>(),
        Reason.Of<HoldNotPassed>(),
        Reason.Of<SettingDiffers>(),
        Reason.Of<ToolUnlisted>(),

        // people and times
        Reason.Of<PersonUnknown>(),
        Reason.Of<SecondPersonIsFirst>(),
        Reason.Of<CheckerOutOfRole>(),
        Reason.Of<ApprenticeUnwatched>(),
        Reason.Of<TimeUnclear>(),
        Reason.Of<TimesBackward>(),

        // the end
        Reason.Of<StopsUnsigned>(),
        Reason.Of<DeviationsUnsigned>(),
        Reason.Of<ReleaseMissing>(),
    ];

    public static ImmutableArray<Reason> All => [.. Identity, .. Entries];
}
