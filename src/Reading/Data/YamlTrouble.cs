using System.Text.RegularExpressions;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Reading.Faults;

namespace Witnessmark.Reading.Data;

/// <summary>
/// Why a data text cannot be read, in words. The parser knows only where it gave up; what bites there is one of a few signs,
/// looked for in the lines from the last good place to that one.
/// </summary>
internal static partial class YamlTrouble
{
    private const string Why = "The file cannot be read from here on, so nothing in it is known.";

    /// <param name="source">The file.</param>
    /// <param name="span">The part that is data.</param>
    /// <param name="lastGood">Offset of the last thing that was understood.</param>
    /// <param name="mark">Offset where the parser gave up.</param>
    public static Finding Explain(SourceText source, TextSpan span, int lastGood, int mark)
    {
        var first = Math.Min(source.PositionOf(lastGood).Line, source.PositionOf(mark).Line);
        var last = source.PositionOf(Math.Max(lastGood, mark)).Line;
        for (var number = last; number >= first; number--)
            if (Known(new Line(source, number)) is { } known)
                return known;
        var at = Math.Clamp(mark, span.Start, span.End);
        var line = new Line(source, source.PositionOf(at).Line);
        if (line.Text.Length > 0 && !line.Text.StartsWith("- ", StringComparison.Ordinal) && !line.Text.Contains(':', StringComparison.Ordinal))
            return line.Whole("This line has no colon.", "Write `key: value`. If it goes on from the line above, put that text on one line, in quotes.");
        return line.Whole(
            "This line does not fit those above it.",
            "Look at how far in it begins: what belongs together begins at the same column, two blanks further in than its heading. " +
            "Then look at quotes and brackets in the line above.");
    }

    /// <summary>The parser ended in the middle of a map without a word; what makes it do so is a line that begins with a colon.</summary>
    public static Finding HalfRead(SourceText source, TextSpan span, int lastGood)
    {
        var (first, last) = (source.PositionOf(span.Start).Line, source.PositionOf(span.End).Line);
        for (var number = first; number <= last; number++)
            if (new Line(source, number) is var line && line.Text.StartsWith(':'))
                return line.Whole("This line begins with a colon; the key in front of it is missing.", "Write `key: value`.");
        return Explain(source, span, lastGood, lastGood);
    }

    private static Finding? Known(Line line) =>
        BlockSign(line) ?? Quote(line) ?? Bracket(line) ?? BadBeginning(line) ?? ListOnTheLine(line) ?? SecondColon(line) ?? NoBlank(line);

    private static Finding? BlockSign(Line line) =>
        line.Value.Length > 0 && line.Value[0] is '>' or '|' && !BlockHeader().IsMatch(line.Value)
            ? line.InValue(
                0,
                1,
                $"`{Say.Short(line.Value)}`: `{line.Value[0]}` at the beginning of a value has another meaning here.",
                "Write ranges in words: `from 3.10 mm`, `above 3.10 mm`, `3.10 mm or less`.")
            : null;

    private static Finding? Quote(Line line)
    {
        if (line.Value.Length == 0 || line.Value[0] is not ('"' or '\''))
            return null;
        var close = line.Value.LastIndexOf(line.Value[0]);
        if (close == 0)
            return line.InValue(0, line.Value.Length, "The quote at the beginning is not closed.", $"Put a {line.Value[0]} at the end of the text, on the same line.");
        var behind = line.Value[(close + 1)..].Trim();
        return behind.Length > 0 && behind[0] is not ('#' or ',' or ']' or '}')
            ? line.InValue(close + 1, line.Value.Length, $"`{Say.Short(behind)}` stands behind the closing quote.", "Put the whole text in quotes, or none of it.")
            : null;
    }

    private static Finding? Bracket(Line line)
    {
        if (line.Value.Length == 0 || line.Value[0] is not ('[' or '{'))
            return null;
        var (open, close) = line.Value[0] == '[' ? ('[', ']') : ('{', '}');
        if (line.Value.Count(c => c == open) == line.Value.Count(c => c == close))
            return null;
        return line.InValue(
            0,
            1,
            $"The brackets `{open}` and `{close}` in this line do not pair.",
            $"Close each `{open}` with `{close}`. Long lists are better one to a line, each behind `- `.");
    }

    private static Finding? BadBeginning(Line line) =>
        line.Value.Length > 0 && line.Value[0] is '@' or '`' or '%' or '*' or '&' or '!' or ']' or '}' or ','
            ? line.InValue(0, 1, $"A text cannot begin with `{line.Value[0]}`.", "Put the text in quotes.")
            : null;

    private static Finding? ListOnTheLine(Line line) =>
        line.HasKey && line.Value.StartsWith("- ", StringComparison.Ordinal)
            ? line.InValue(0, 1, "A list begins on the line of its key.", "Put each `- ` on a line of its own below the key, two blanks in.")
            : null;

    private static Finding? SecondColon(Line line)
    {
        if (!line.HasKey || line.Value is [] or ['"' or '\'' or '[' or '{', ..])
            return null;
        return ColonAndBlank().Match(line.Value) is { Success: true } colon
            ? line.InValue(
                colon.Index,
                colon.Index + 1,
                $"There is a colon and a blank inside this text: `{Say.Short(line.Value)}`.",
                "Put the text in quotes; or is it a key of its own, on the next line?")
            : null;
    }

    private static Finding? NoBlank(Line line) =>
        ColonWithoutBlank().Match(line.Text) is { Success: true } match
            ? line.InText(match.Length - 1, match.Length, $"There is no blank behind the colon: `{Say.Short(line.Text)}`.", "Put a blank behind it: `key: value`.")
            : null;

    [GeneratedRegex(@"^[>|][-+0-9]{0,2}\s*(#.*)?$")]
    private static partial Regex BlockHeader();

    [GeneratedRegex(@":(\s|$)")]
    private static partial Regex ColonAndBlank();

    [GeneratedRegex(@"^[\w-]+:(?=[^\s:/])")]
    private static partial Regex ColonWithoutBlank();

    [GeneratedRegex(@"^(- +)*([^\s""'\[{#:][^:#]*?): +")]
    private static partial Regex KeyPart();

    /// <summary>A line cut into indent, key and value.</summary>
    private sealed class Line
    {
        private const int Longest = 1000;

        private readonly SourceText _source;
        private readonly int _textAt;
        private readonly int _valueAt;

        public Line(SourceText source, int number)
        {
            _source = source;
            var whole = source.Line(number);
            var trimmed = whole.Trim();
            // no person's line is longer, and patterns would crawl over one of a million signs
            Text = trimmed.Length <= Longest ? trimmed : trimmed[..Longest];
            _textAt = source.StartOfLine(number) + (whole.Length - whole.TrimStart().Length);
            var key = KeyPart().Match(Text);
            HasKey = key.Success;
            var skipped = key.Success ? key.Length : Text.StartsWith("- ", StringComparison.Ordinal) ? 2 : 0;
            _valueAt = _textAt + skipped;
            Value = Text[skipped..];
        }

        public string Text { get; }

        public string Value { get; }

        public bool HasKey { get; }

        public Finding Whole(string found, string putRight) => InText(0, Text.Length, found, putRight);

        public Finding InText(int start, int end, string found, string putRight) =>
            new(DataFaults.YamlBroken, _source.At(_textAt + start, _textAt + end), found, Why, putRight);

        public Finding InValue(int start, int end, string found, string putRight) =>
            new(DataFaults.YamlBroken, _source.At(_valueAt + start, _valueAt + end), found, Why, putRight);
    }
}
