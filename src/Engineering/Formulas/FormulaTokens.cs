using System.Collections.Immutable;
using System.Globalization;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;

namespace Witnessmark.Engineering.Formulas;

internal enum TokenKind
{
    Number,
    Word,
    Sign,
    Open,
    Close,
    End,
}

internal readonly record struct FormulaToken(TokenKind Kind, TextSpan At)
{
    public string Word { get; init; } = "";

    public char Sign { get; init; }

    public decimal Number { get; init; }

    public int Decimals { get; init; }

    public Unit? Unit { get; init; }
}

/// <summary>Splits a formula into words, numbers with their units, signs and brackets.</summary>
internal sealed class FormulaTokens
{
    private const int MostDigits = 15;

    private readonly string _text;
    private readonly ImmutableArray<FormulaToken>.Builder _tokens = ImmutableArray.CreateBuilder<FormulaToken>();
    private int _at;

    private FormulaTokens(string text) => _text = text;

    public static (ImmutableArray<FormulaToken> Tokens, FormulaFault? Fault) Of(string text)
    {
        var reader = new FormulaTokens(text);
        while (reader._at < text.Length)
            if (reader.Next() is { } fault)
                return ([], fault);
        reader._tokens.Add(new FormulaToken(TokenKind.End, new TextSpan(text.Length, text.Length)));
        return (reader._tokens.ToImmutable(), null);
    }

    private FormulaFault? Next()
    {
        var c = _text[_at];
        if (char.IsWhiteSpace(c))
            _at++;
        else if (char.IsAsciiDigit(c))
            return Number();
        else if (char.IsLetter(c))
            Word();
        else if (c is '(' or ')')
            Add(new FormulaToken(c == '(' ? TokenKind.Open : TokenKind.Close, Span(1)), 1);
        else if (SignOf(c) is { } sign)
            Add(new FormulaToken(TokenKind.Sign, Span(1)) { Sign = sign }, 1);
        else
            return new FormulaFault(FormulaProblem.UnexpectedCharacter, Span(1), $"{c} has no meaning in a formula");
        return null;
    }

    private void Word()
    {
        var length = RunOf(c => char.IsLetterOrDigit(c) || c is '-' or '_');
        var word = _text.Substring(_at, length);
        Add(word is "x" or "X"
            ? new FormulaToken(TokenKind.Sign, Span(1)) { Sign = '×' }
            : new FormulaToken(TokenKind.Word, Span(length)) { Word = word }, length);
    }

    private FormulaFault? Number()
    {
        var start = _at;
        var length = RunOf(c => char.IsAsciiDigit(c) || c is '.' or ',');
        var written = _text.Substring(start, length);
        if (written.Contains(','))
            return new FormulaFault(FormulaProblem.DecimalComma, Span(length), $"{written} has a comma: write {written.Replace(',', '.')}");
        if (written.Length > MostDigits || !decimal.TryParse(written, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number))
            return new FormulaFault(FormulaProblem.TooLarge, Span(length), $"{written} is no number that can be reckoned with");
        var point = written.IndexOf('.');
        _at += length;
        var unit = Unit(out var fault);
        if (fault is not null)
            return fault;
        _tokens.Add(new FormulaToken(TokenKind.Number, new TextSpan(start, _at)) { Number = number, Unit = unit, Decimals = point < 0 ? 0 : written.Length - point - 1 });
        return null;
    }

    /// <summary>The unit behind a number: the run of characters up to a space or bracket, or its longest part before a stroke that is a unit.</summary>
    private Unit? Unit(out FormulaFault? fault)
    {
        fault = null;
        var before = _at;
        _at += RunOf(char.IsWhiteSpace);
        var run = _text.Substring(_at, RunOf(c => !char.IsWhiteSpace(c) && c is not ('(' or ')' or '+' or '×' or '*')));
        for (var length = run.Length; length > 0; length = run.LastIndexOf('/', length - 1))
            if (UnitTable.Find(run.AsSpan(..length)) is { } unit)
            {
                _at += length;
                return unit;
            }
        if (run.Length > 0 && char.IsLetter(run[0]) && run is not ("x" or "X"))
        {
            var near = NearMiss.Of(run, UnitTable.Spellings);
            fault = new FormulaFault(FormulaProblem.UnknownUnit, Span(run.Length), $"{run} is no unit{(near is null ? "" : $": did you mean {near}")}");
        }
        _at = before;
        return null;
    }

    private int RunOf(Func<char, bool> belongs)
    {
        var end = _at;
        while (end < _text.Length && belongs(_text[end]))
            end++;
        return end - _at;
    }

    private static char? SignOf(char c) => c switch
    {
        '+' => '+',
        '-' or '−' or '–' => '−',
        '*' or '×' or '·' => '×',
        '/' or '÷' => '/',
        _ => null,
    };

    private void Add(FormulaToken token, int length)
    {
        _tokens.Add(token);
        _at += length;
    }

    private TextSpan Span(int length) => TextSpan.Of(_at, length);
}
