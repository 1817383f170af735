using System.Collections.Immutable;
using Witnessmark.Checking.Rules.Changes;
using Witnessmark.Checking.Rules.Contract;
using Witnessmark.Checking.Rules.Counts;
using Witnessmark.Checking.Rules.Fasteners;
using Witnessmark.Checking.Rules.Messages;
using Witnessmark.Checking.Rules.People;
using Witnessmark.Checking.Rules.Readings;
using Witnessmark.Checking.Rules.Register;
using Witnessmark.Checking.Rules.Release;
using Witnessmark.Checking.Rules.Shims;
using Witnessmark.Checking.Rules.Stack;
using Witnessmark.Checking.Rules.Steps;
using Witnessmark.Checking.Rules.Tools;
using Witnessmark.Checking.Rules.Torque;
using Witnessmark.Checking.Rules.Translations;

namespace Witnessmark.Checking;

/// <summary>All rules, in the order of their topics. To add one: its .cs, its .md beside it, a line here, case files.</summary>
public static partial class RuleSet
{
    public static readonly ImmutableArray<Rule> All =
    [
        // steps
        Rule.Of<InputNotTaken>(),
        Rule.Of<ReadingWithoutConsequence>(),
        Rule.Of<ResultNotTaken>(),
        Rule.Of<SectionTooLong>(),
        Rule.Of<StepNameForbids>(),
        Rule.Of<StepNameNoOrder>(),
        Rule.Of<StepNameTooWide>(),
        Rule.Of<StepNameTwice>(),
        Rule.Of<StepNamesOneWordApart>(),
        Rule.Of<StepNumberWrong>(),
        Rule.Of<StepTooLong>(),
        Rule.Of<ToolListMissing>(),
        Rule.Of<TorqueInProse>(),
        // messages
        Rule.Of<HazardWithoutMessage>(),
        Rule.Of<MessageIdle>(),
        Rule.Of<MessageLate>(),
        Rule.Of<MessageTooTall>(),
        Rule.Of<MessageWithoutAvoidance>(),
        Rule.Of<MessageWithoutConsequence>(),
        Rule.Of<MessageWithoutHazard>(),
        Rule.Of<NumberOnlyInMessage>(),
        Rule.Of<SignalWordUnknown>(),
        Rule.Of<SignalWordWrong>(),
        Rule.Of<WeakerMessageFirst>(),
        Rule.Of<WorkInMessage>(),
        // contract
        Rule.Of<HandOverUnsafe>(),
        Rule.Of<LandWithoutLift>(),
        Rule.Of<LoadLeftHanging>(),
        Rule.Of<PromiseWithoutWork>(),
        Rule.OfSheet<SafeStopUnsaid>(),
        // counts
        Rule.Of<AmountOver>(),
        Rule.Of<AmountTotalWrong>(),
        Rule.Of<CountDisagrees>(),
        Rule.Of<FastenersLeftOut>(),
        Rule.Of<GroupLeftLoose>(),
        // torque
        Rule.OfSheet<FrictionAgainstCondition>(),
        Rule.OfSheet<FrictionNotStated>(),
        Rule.OfSheet<NumberWithoutBasis>(),
        Rule.OfSheet<PreloadPastProof>(),
        Rule.OfSheet<TightenedWithoutTorque>(),
        Rule.OfSheet<ToleranceTooWide>(),
        Rule.OfSheet<TorqueAboveWindow>(),
        Rule.OfSheet<TorqueBelowWindow>(),
        Rule.OfSheet<TorqueMissesAim>(),
        Rule.OfSheet<TorqueUnitSlip>(),
        Rule.OfSheet<TorqueWithoutTolerance>(),
        Rule.OfSheet<UnitsDisagree>(),
        // fasteners
        Rule.OfSheet<ClassOutsideSize>(),
        Rule.OfSheet<ClassUnknown>(),
        Rule.OfSheet<FirstPassTooHigh>(),
        Rule.OfSheet<LastPassNotFull>(),
        Rule.OfSheet<MarkOfOtherThread>(),
        Rule.OfSheet<PassesNotRising>(),
        Rule.OfSheet<SequenceNotARound>(),
        Rule.OfSheet<SequenceNotCrossed>(),
        // tools
        Rule.Of<AdapterWithoutLength>(),
        Rule.Of<GaugeMeasuresOther>(),
        Rule.Of<GaugeNotCalibrated>(),
        Rule.Of<GaugeNotOnList>(),
        Rule.Of<GaugeOutOfRange>(),
        Rule.Of<GaugeTooCoarse>(),
        Rule.Of<ImpactForFinal>(),
        Rule.Of<PassBelowWrench>(),
        Rule.Of<SettingOffTheScale>(),
        Rule.Of<TightenedWithoutWrench>(),
        Rule.Of<WrenchAtEndOfScale>(),
        Rule.Of<WrenchInOtherUnit>(),
        Rule.Of<WrenchOutOfRange>(),
        // stack
        Rule.OfSheet<StackClearanceMissed>(),
        Rule.OfSheet<StackClearanceTight>(),
        Rule.OfSheet<StackDisagreesWithParts>(),
        Rule.OfSheet<StackEndRubs>(),
        Rule.OfSheet<StackEndUnnamed>(),
        Rule.OfSheet<StackEndsDiffer>(),
        Rule.OfSheet<StackFacingInward>(),
        Rule.OfSheet<StackFacingMissing>(),
        Rule.OfSheet<StackFacingUnknown>(),
        Rule.OfSheet<StackSplineMissing>(),
        Rule.OfSheet<StackThicknessMissing>(),
        Rule.OfSheet<StackTwoAlike>(),
        Rule.OfSheet<StackWearPastSeal>(),
        Rule.OfSheet<WornAtAboveNew>(),
        // shims
        Rule.OfSheet<ShimDirectionMissing>(),
        Rule.OfSheet<ShimTargetOutside>(),
        Rule.OfSheet<ShimWindowBelowStep>(),
        Rule.OfSheet<ShimsOutOfReach>(),
        // readings
        Rule.OfMeasuring<AcceptedKindDiffers>(),
        Rule.OfMeasuring<AcceptedStackUnknown>(),
        Rule.OfMeasuring<BandOutOfReach>(),
        Rule.OfMeasuring<BandsGap>(),
        Rule.OfMeasuring<BandsOverlap>(),
        Rule.OfMeasuring<FormulaGoesRound>(),
        Rule.OfMeasuring<FormulaKindsDiffer>(),
        Rule.OfMeasuring<FormulaUnknownName>(),
        Rule.OfMeasuring<FormulaUnreadable>(),
        Rule.OfMeasuring<PointNamesDisagree>(),
        Rule.OfMeasuring<ReadingKindsDiffer>(),
        Rule.OfMeasuring<ResolutionTooCoarse>(),
        // people
        Rule.Of<AnswerWithoutValue>(),
        Rule.Of<CallWithoutAnswer>(),
        Rule.Of<CheckerDidTheWork>(),
        Rule.Of<CrewMissing>(),
        Rule.Of<LiftOnePerson>(),
        Rule.Of<LiftWithoutCall>(),
        Rule.Of<RoleNotInCrew>(),
        Rule.Of<StepWithoutDoer>(),
        Rule.Of<StepWithoutZone>(),
        Rule.Of<VerifiedWithoutChecker>(),
        // release
        Rule.Of<ApplicabilityMissing>(),
        Rule.Of<ApprovalMissing>(),
        Rule.Of<ApprovalDateUnclear>(),
        Rule.Of<ApproverIsAuthor>(),
        Rule.Of<ApproverOutOfRole>(),
        Rule.Of<AuthorMissing>(),
        Rule.Of<BasisMissing>(),
        Rule.Of<DraftPerformed>(),
        Rule.Of<InitialsUnknown>(),
        Rule.Of<PositionUnknown>(),
        Rule.Of<SerialsOutsideMachine>(),
        // register
        Rule.Of<ReleasedVersionChanged>(),
        Rule.Of<ReleasedNotOnRecord>(),
        Rule.OfRegister<CopyMarkTwice>(),
        Rule.OfRegister<CopyOutOfForce>(),
        Rule.OfRegister<CopyOfNoRelease>(),
        Rule.OfRegister<EndOfNoCopy>(),
        Rule.OfRegister<MarkSignShared>(),
        Rule.OfRegister<MarkSignUnclear>(),
        Rule.OfRegister<RegisterDateUnclear>(),
        Rule.OfRegister<ReleasedTwice>(),
        // changes
        Rule.OfHouseChange<GuardLoosened>(),
        Rule.OfChange<HazardApprovalsShort>(),
        Rule.OfChange<RemovalUnsaid>(),
        Rule.OfChange<VersionStepShort>(),
        Rule.OfSheet<BasisSuperseded>(),
        // translations
        Rule.OfTranslation<ComparerIsTranslator>(),
        Rule.OfTranslation<ComparisonMissing>(),
        Rule.OfTranslation<ComparisonStale>(),
        Rule.OfTranslation<ComparisonUnclear>(),
        Rule.OfTranslation<TranslationBlankDiffers>(),
        Rule.OfTranslation<TranslationForNothing>(),
        Rule.OfTranslation<TranslationHeadingMissing>(),
        Rule.OfTranslation<TranslationMessageDiffers>(),
        Rule.OfTranslation<TranslationNameTooWide>(),
        Rule.OfTranslation<TranslationNumberDiffers>(),
        Rule.OfTranslation<TranslationPerformedMissing>(),
        Rule.OfTranslation<TranslationStale>(),
        Rule.OfTranslation<TranslationStepMissing>(),
        Rule.OfTranslation<TranslationStepUnknown>(),
        Rule.OfTranslation<TranslationTextMissing>(),
        Rule.OfTranslation<TranslationUntouched>(),
        Rule.OfTranslation<TranslationWordIdle>(),
        Rule.OfTranslation<TranslationWordMissing>(),
    ];
}
