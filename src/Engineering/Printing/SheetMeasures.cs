using System.Collections.Immutable;

namespace Witnessmark.Engineering.Printing;

/// <summary>
/// Every measure of the printed sheet, once: the style sheet takes them as its variables, drawings and rules by name. What they may not
/// go below, and who says so, is held by tests/Rendering.Tests/Checklist/MeasuresTests.cs.
/// </summary>
public static class SheetMeasures
{
    private static readonly List<Measure> Known = [];

    // running text
    public static readonly Measure Body = Type("body", 14);
    public static readonly Measure BodyLine = Type("body-line", 17.5);
    public static readonly Measure Said = Type("said", 13.5);
    public static readonly Measure SaidLine = Type("said-line", 17);

    // labels of boxes, hints; the floor only in bold
    public static readonly Measure Small = Type("small", 12);
    public static readonly Measure SmallLine = Type("small-line", 15);
    public static readonly Measure LabelLine = Type("label-line", 12.5);
    public static readonly Measure Floor = Type("floor", 11);
    public static readonly Measure FloorLine = Type("floor-line", 12);

    // read at arm's length and more: torque, count, limits; step codes; parts
    public static readonly Measure Big = Type("big", 18);
    public static readonly Measure Code = Type("code", 20);
    public static readonly Measure Part = Type("part", 21);

    // the fender card
    public static readonly Measure Number = Type("number", 20);

    // headings
    public static readonly Measure Title = Type("title", 24);
    public static readonly Measure TitleLine = Type("title-line", 26);
    public static readonly Measure Heading = Type("heading", 20);
    public static readonly Measure HeadingLine = Type("heading-line", 23);
    public static readonly Measure Subheading = Type("subheading", 16);
    public static readonly Measure SubheadingLine = Type("subheading-line", 19);
    public static readonly Measure Span = Type("span", 13);
    public static readonly Measure Signal = Type("signal", 21);
    public static readonly Measure SignalLong = Type("signal-long", 17);

    // margins of the page
    public static readonly Measure TopText = Type("top-text", 20);
    public static readonly Measure TopCount = Type("top-count", 16);
    public static readonly Measure SetMark = Type("set-mark", 34);
    public static readonly Measure FootLine = Type("foot-line", 13.2);

    // rules, each a hair over whole pixels of 1/96 inch: the browser rounds a border down to whole ones, and 0.5 mm printed as 0.26
    public static readonly Measure Rule = Length("rule", 0.53);
    public static readonly Measure BoxRule = Length("box-rule", 0.55);
    public static readonly Measure Divider = Length("divider", 0.6);
    public static readonly Measure Caution = Length("caution-rule", 1.06);
    public static readonly Measure Thick = Length("thick", 1.06);
    public static readonly Measure Edge = Length("edge", 1.33);
    public static readonly Measure Warning = Length("warning-rule", 1.6);
    public static readonly Measure Flag = Length("flag", 4);

    // of a warning on paper, where no colour tells it from a caution
    public static readonly Measure Hatch = Length("hatch", 3);

    // boxes are written in, cells are struck
    public static readonly Measure BoxHeight = Length("box-height", 11.6);
    public static readonly Measure Narrow = Length("narrow", 18);
    public static readonly Measure Reading = Length("reading", 25);
    public static readonly Measure Tool = Length("tool", 26);
    public static readonly Measure Term = Length("term", 27);
    public static readonly Measure Clock = Length("clock", 30);
    public static readonly Measure Date = Length("date", 36);
    public static readonly Measure TotalBox = Length("total-box", 9);
    public static readonly Measure CellHeight = Length("cell-height", 9.4);
    public static readonly Measure CellWidth = Length("cell-width", 18);
    public static readonly Measure CellPad = Length("cell-pad", 1.6);
    public static readonly Measure Digit = Length("digit", 5.2);
    public static readonly Measure Point = Length("point", 1.5);

    // a row: code, words, boxes
    public static readonly Measure Row = Length("row", 13.2);
    public static readonly Measure CodeWidth = Length("code-width", 21);
    public static readonly Measure WordsWidth = Length("words-width", 62);
    public static readonly Measure RowGap = Length("row-gap", 3);
    public static readonly Measure BoxGap = Length("box-gap", 2.4);
    public static readonly Measure LabelGap = Length("label-gap", 1);
    public static readonly Measure LabelWidth = Length("label-width", 32);

    // blocks
    public static readonly Measure LadderRow = Length("ladder-row", 9.9);
    public static readonly Measure LadderCell = Length("ladder-cell", 45);
    public static readonly Measure LadderPad = Length("ladder-pad", 0.45);
    public static readonly Measure Drawing = Length("drawing", 26);
    public static readonly Measure Circle = Length("circle", 70);
    public static readonly Measure Dial = Length("dial", 42);
    public static readonly Measure Gap = Length("gap", 1.6);
    public static readonly Measure MessageGap = Length("message-gap", 1.3);
    public static readonly Measure SignalWidth = Length("signal-width", 51);
    public static readonly Measure NoticeWidth = Length("notice-width", 36);

    // the narrower paper is A4, the shorter one Letter
    public static readonly Measure NarrowPaper = Length("narrow-paper", 210);
    public static readonly Measure ShortPaper = Length("short-paper", 279.4);

    // the page: a clip covers the top, a clamp the left, identity and code stand at the foot, nothing is on the back
    public static readonly Measure Clip = Length("clip", 20);
    public static readonly Measure Clamp = Length("clamp", 13);
    public static readonly Measure CardClamp = Length("card-clamp", 25);
    public static readonly Measure ClipHole = Length("clip-hole", 7);
    public static readonly Measure Right = Length("right", 8);
    public static readonly Measure Foot = Length("foot", 29);
    public static readonly Measure FootSpace = Length("foot-space", 6.5);
    public static readonly Measure FootPad = Length("foot-pad", 1.5);
    public static readonly Measure FootText = Length("foot-text", 165);
    public static readonly Measure CodePlace = Length("code-place", 24);
    public static readonly Measure Module = Length("module", 0.5);
    public static readonly Measure SquareCode = Length("square-code", 22);
    public static readonly Measure SquareCodeQuiet = Length("square-code-quiet", 5);

    public static ImmutableArray<Measure> All { get; } = [.. Known];

    /// <summary><c>:root{--body:14pt;…}</c></summary>
    public static string Root { get; } = $":root{{{string.Concat(All.Select(m => m.Css))}}}\n";

    private static Measure Type(string name, double points) => Keep(new Measure(name, points, IsType: true));

    private static Measure Length(string name, double millimetres) => Keep(new Measure(name, millimetres, IsType: false));

    private static Measure Keep(Measure measure)
    {
        Known.Add(measure);
        return measure;
    }
}
