using System.Collections.Immutable;
using Witnessmark.Language.Findings;

namespace Witnessmark.Reading.Faults;

/// <summary>What can be wrong with the text of a procedure. Each has its page, <c>name.md</c>, beside this file.</summary>
public static class StepFaults
{
    public static readonly RuleInfo NothingWritten = Text("nothing-written");
    public static readonly RuleInfo FrontMatterMissing = Text("front-matter-missing");
    public static readonly RuleInfo FrontMatterOpen = Text("front-matter-open");
    public static readonly RuleInfo RawHtml = Text("raw-html");
    public static readonly RuleInfo LinkOutside = Text("link-outside");
    public static readonly RuleInfo HeadingLevel = Text("heading-level");
    public static readonly RuleInfo PartName = Text("part-name");
    public static readonly RuleInfo NestedTooDeep = Text("nested-too-deep");
    public static readonly RuleInfo NotPrinted = Text("not-printed");
    public static readonly RuleInfo TextUnreadable = Text("text-unreadable");

    public static readonly RuleInfo StepWithoutName = Step("step-without-name");
    public static readonly RuleInfo NotAStep = Step("not-a-step");
    public static readonly RuleInfo TooManySteps = Step("too-many-steps");
    public static readonly RuleInfo TextBetweenSteps = Step("text-between-steps");
    public static readonly RuleInfo FactsSlipped = Step("facts-slipped");

    public static readonly RuleInfo AlertMarker = Message("alert-marker");
    public static readonly RuleInfo MessageShape = Message("message-shape");
    public static readonly RuleInfo MessageInStep = Message("message-in-step");
    public static readonly RuleInfo MessageForNothing = Message("message-for-nothing");

    public static readonly RuleInfo FactUnknown = Fact("fact-unknown");
    public static readonly RuleInfo FactMisplaced = Fact("fact-misplaced");
    public static readonly RuleInfo FactTwice = Fact("fact-twice");
    public static readonly RuleInfo FactUnclear = Fact("fact-unclear");
    public static readonly RuleInfo FactBroken = Fact("fact-broken");
    public static readonly RuleInfo NoteBullet = Fact("note-bullet");
    public static readonly RuleInfo ConditionUnclear = Fact("condition-unclear");

    public static readonly RuleInfo NameUnknown = Name("name-unknown");
    public static readonly RuleInfo ValueUnknown = Name("value-unknown");
    public static readonly RuleInfo ParameterUnknown = Name("parameter-unknown");
    public static readonly RuleInfo ArgumentMissing = Name("argument-missing");
    public static readonly RuleInfo PinMissing = Name("pin-missing");
    public static readonly RuleInfo PinDiffers = Name("pin-differs");
    public static readonly RuleInfo PerformCircle = Name("perform-circle");

    public static readonly ImmutableArray<RuleInfo> All =
    [
        NothingWritten, FrontMatterMissing, FrontMatterOpen, RawHtml, LinkOutside, HeadingLevel, PartName, NestedTooDeep, NotPrinted, TextUnreadable,
        StepWithoutName, NotAStep, TooManySteps, TextBetweenSteps, FactsSlipped,
        AlertMarker, MessageShape, MessageInStep, MessageForNothing,
        FactUnknown, FactMisplaced, FactTwice, FactUnclear, FactBroken, NoteBullet, ConditionUnclear,
        NameUnknown, ValueUnknown, ParameterUnknown, ArgumentMissing, PinMissing, PinDiffers, PerformCircle,
    ];

    private static RuleInfo Text(string name) => new(name, "Text", Severity.Fault);

    private static RuleInfo Step(string name) => new(name, "Steps", Severity.Fault);

    private static RuleInfo Message(string name) => new(name, "Messages", Severity.Fault);

    private static RuleInfo Fact(string name) => new(name, "Facts", Severity.Fault);

    private static RuleInfo Name(string name) => new(name, "Names", Severity.Fault);
}
