using System.Globalization;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;

namespace Witnessmark.Language.Quantities;

internal readonly record struct WrittenNumber(decimal Value, TextSpan At, bool IsNegative);

internal readonly record struct WrittenUnit(Unit Unit, TextSpan At);

/// <summary>
/// Goes through a written quantity from left to right. The first fault stays: what is read after it is not used, so that the
/// readers need not ask after every word.
/// </summary>
/// <param name="ranges">Whether a range may stand here: then the words for one are suggested.</param>
internal sealed class QuantityScanner(string text, bool ranges = false)
{
    public const int LongestText = 200;
    private const int WordsOfLongestUnit = 4;

    private QuantityFault? _fault = text.Length > LongestText
        ? new QuantityFault(QuantityProblem.TooLong, new TextSpan(LongestText, text.Length), null)
        : null;

    /// <summary>Takes every unit as it is read, where somebody wants to know them.</summary>
    public List<WrittenUnit>? Units { get; init; }

    public static Unit Percent { get; } = UnitTable.Get("%");

    public int Position { get; private set; }

    public bool Failed => _fault is not null;

    public bool AtEnd => SkipBlanks() == text.Length;

    public Parsed<T> Result<T>(T value)
        where T : struct => _fault is null ? new Parsed<T>(value, null) : new Parsed<T>(default, _fault);

    public void Fail(QuantityProblem problem, TextSpan at, string? suggestion = null) =>
        _fault ??= new QuantityFault(problem, at, suggestion);

    public string Slice(TextSpan span) => text[span.Start..span.End];

    /// <summary>The whole text with one part of it put right.</summary>
    public string Replaced(TextSpan span, string by) => text[..span.Start] + by + text[span.End..];

    public TextSpan Rest(int from) => new(from, Math.Max(from, text.AsSpan().TrimEnd().Length));

    public void End()
    {
        if (!Failed && !AtEnd)
            Fail(QuantityProblem.LeftOver, Rest(Position));
    }

    public Quantity Quantity()
    {
        var number = Number();
        return Unit(number) is { } unit ? new Quantity(number.Value, unit.Unit) : default;
    }

    public WrittenNumber Number()
    {
        if (Failed)
            return default;
        var numeral = Numeral.At(text, SkipBlanks());
        var fault = numeral.Fault(text, ranges);
        if (fault is not null)
        {
            _fault = fault;
            return default;
        }
        Position = numeral.Span.End;
        return new WrittenNumber(numeral.Value(text), numeral.Span, numeral.IsNegative);
    }

    /// <summary>The unit behind a number: one must be there.</summary>
    public WrittenUnit? Unit(WrittenNumber number)
    {
        var unit = UnitIfAny();
        if (unit is null)
            FailWithoutUnit(number);
        return unit;
    }

    public void FailWithoutUnit(WrittenNumber number)
    {
        if (AtEnd || text[Position] is '(' or ')')
            Fail(QuantityProblem.BareNumber, number.At);
        else
            Fail(QuantityProblem.LeftOver, Rest(Position));
    }

    /// <summary>The longest spelling of a unit that stands here; null at the end or before a word that goes on.</summary>
    public WrittenUnit? UnitIfAny()
    {
        var start = SkipBlanks();
        if (Failed || UnitWords.StopsAt(text, start))
            return null;
        WrittenUnit? longest = null;
        var end = UnitWords.FirstEnd(text, start);
        for (var words = 0; end is not null && words < WordsOfLongestUnit; words++, end = UnitWords.NextEnd(text, end.Value))
            if (UnitTable.Find(text.AsSpan(start..end.Value)) is { } unit)
                longest = new WrittenUnit(unit, new TextSpan(start, end.Value));
        if (longest is null)
            FailUnknown(start);
        else
            Take(longest.Value);
        return longest;
    }

    private void Take(WrittenUnit unit)
    {
        Position = unit.At.End;
        Units?.Add(unit);
    }

    /// <summary>A worked-out tolerance with as many digits as can be read again, never wider than it was written.</summary>
    public Quantity Kept(Quantity tolerance, TextSpan at)
    {
        var whole = decimal.Truncate(tolerance.Number).ToString(CultureInfo.InvariantCulture).Length;
        if (whole > Numeral.MostDigits)
            Fail(QuantityProblem.TooLong, at);
        return tolerance with { Number = Math.Round(tolerance.Number, Math.Max(0, Numeral.MostDigits - whole), MidpointRounding.ToZero) };
    }

    /// <summary>Takes a word or words that stand here by themselves.</summary>
    public bool Word(string words)
    {
        var start = SkipBlanks();
        var end = start + words.Length;
        if (Failed || !text.AsSpan(start).StartsWith(words, StringComparison.OrdinalIgnoreCase))
            return false;
        if (end < text.Length && !char.IsWhiteSpace(text[end]))
            return false;
        Position = end;
        return true;
    }

    /// <summary>Takes a mark that needs no blank around it.</summary>
    public bool Mark(string mark)
    {
        if (Failed || !text.AsSpan(SkipBlanks()).StartsWith(mark, StringComparison.Ordinal))
            return false;
        Position += mark.Length;
        return true;
    }

    public bool PlusMinus() => UnitWords.PlusMinus.Any(Mark);

    private void FailUnknown(int start)
    {
        var all = new TextSpan(start, UnitWords.PhraseEnd(text, start));
        var first = new TextSpan(start, UnitWords.FirstEnd(text, start)!.Value);
        var near = Near(Slice(all));
        Fail(QuantityProblem.UnknownUnit, near is null ? first : all, near ?? Near(Slice(first)));
    }

    private static string? Near(string written) =>
        UnitTable.Choices(written) ?? (NearMiss.Of(written, UnitTable.Spellings) is { } near ? UnitTable.Get(near).Symbol : null);

    private int SkipBlanks()
    {
        while (Position < text.Length && char.IsWhiteSpace(text[Position]))
            Position++;
        return Position;
    }
}
