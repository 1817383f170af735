using System.Collections.Immutable;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Reading.Faults;

namespace Witnessmark.Reading.Steps;

/// <summary>Findings about numbered steps.</summary>
internal static class StepFindings
{
    /// <summary>Two digits on the sheet, and four spaces are enough for what stands below.</summary>
    public const int Most = 99;

    /// <summary>Where the facts of a step begin.</summary>
    private const int Depth = 4;

    private static readonly ImmutableArray<string> Numbers = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];

    public static Finding NoName(Located<int> written, string? text) => new(
        StepFaults.StepWithoutName,
        written.At,
        $"Step {written} has no name in bold.",
        "The name is what is struck on the sheet, called across the machine and found again in the next version.",
        text is { Length: > 0 }
            ? $"Put the command in bold: `{written}. **{FirstSentence(text)}** …`."
            : $"Write it like this: `{written}. **Count what is left over.** Nothing may be left on the paper.`");

    public static Finding ListInStep(Location at, int step) => new(
        StepFaults.NotAStep,
        at,
        $"A numbered list stands inside step {step}.",
        "Its items look like steps and are none: they get no box, no number of their own and no signature.",
        "Make them steps of their own at the edge, or bullets if they only explain.");

    public static Finding TooMany(Location at, int number) => new(
        StepFaults.TooManySteps,
        at,
        $"Step {Say.Number(number)} begins here; the last number is {Most}.",
        "The code of a step on the sheet has two digits, and nobody keeps a hundred steps in view.",
        "Split it into procedures or parts of their own, and perform them.");

    public static Finding Slipped(Location at, int lines, int step, int spaces)
    {
        var found = lines == 1 ? "This line has" : $"These {Word(lines)} lines have";
        var how = spaces == 0 ? "not indented" : $"{Word(spaces)} space{(spaces == 1 ? "" : "s")}";
        return new Finding(
            StepFaults.FactsSlipped,
            at,
            $"{found} slipped out of step {step} ({how}).",
            "On a Git host they print as a list of their own, and the step would be done and signed without them.",
            "Indent by four.")
        {
            Correction = Indented(at, Depth - spaces, $"{(lines == 1 ? "One line is" : $"{Say.Number(lines)} lines are")} indented into step {step}."),
        };
    }

    /// <summary>
    /// The lines of a list pushed in by as many blanks, so that they keep their places to each other; those that stand right stay.
    /// Not where tabs make the places doubtful, or where what stands right would come out of what has slipped.
    /// </summary>
    private static Correction? Indented(Location list, int by, string does)
    {
        var source = list.Source;
        var (first, last) = (list.Start.Line, source.PositionOf(list.Span.End).Line);
        var lines = Enumerable.Range(first, last - first + 1).Select(n => (At: source.StartOfLine(n), Indent: Indent(source.Line(n)))).Where(l => l.Indent is not null).ToList();
        if (by <= 0 || lines.Any(l => l.Indent!.Contains('\t') || (by == Depth && l.Indent.Length == Depth)))
            return null;
        var blanks = new string(' ', by);
        return new Correction([.. lines.Where(l => l.Indent!.Length != Depth).Select(l => new Replacement(source.At(l.At, l.At), blanks))], does);
    }

    /// <summary>Null for a line with nothing in it.</summary>
    private static string? Indent(string line) => string.IsNullOrWhiteSpace(line) ? null : line[..^line.TrimStart().Length];

    private static string Word(int number) => number < Numbers.Length ? Numbers[number] : Say.Number(number);

    private static string FirstSentence(string text)
    {
        var stop = text.IndexOf('.', StringComparison.Ordinal);
        return Say.Short(stop < 0 ? text : text[..(stop + 1)]);
    }
}
