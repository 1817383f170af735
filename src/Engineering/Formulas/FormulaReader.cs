using System.Collections.Immutable;
using Witnessmark.Language.Text;

namespace Witnessmark.Engineering.Formulas;

/// <summary>Reads a formula by recursive descent: sum, then product, then single value. The first fault ends it.</summary>
internal sealed class FormulaReader
{
    private const int Longest = 1000;
    private const int Deepest = 20;

    private readonly string _text;
    private readonly ImmutableArray<FormulaToken> _tokens;
    private int _at;
    private int _depth;
    private FormulaFault? _fault;

    private FormulaReader(string text, ImmutableArray<FormulaToken> tokens) => (_text, _tokens) = (text, tokens);

    private FormulaToken Next => _tokens[_at];

    public static Outcome<FormulaNode> Read(string text)
    {
        if (text.Length > Longest)
            return new FormulaFault(FormulaProblem.TooLong, new TextSpan(Longest, text.Length), $"a formula has at most {Longest} characters");
        if (string.IsNullOrWhiteSpace(text))
            return new FormulaFault(FormulaProblem.Empty, new TextSpan(0, text.Length), "there is no formula");
        var (tokens, fault) = FormulaTokens.Of(text);
        return fault is null ? new FormulaReader(text, tokens).All() : fault;
    }

    private Outcome<FormulaNode> All()
    {
        var root = Sum();
        if (root is null)
            return _fault!;
        if (Next.Kind == TokenKind.Close)
            return new FormulaFault(FormulaProblem.Bracket, Next.At, "this bracket closes nothing");
        return Next.Kind == TokenKind.End ? root : new FormulaFault(FormulaProblem.OperatorMissing, Next.At, $"+, -, x or / is missing before {Written(Next)}");
    }

    private FormulaNode? Sum() => Chain(Product, '+', '−');

    private FormulaNode? Product() => Chain(Single, '×', '/');

    private FormulaNode? Chain(Func<FormulaNode?> part, char one, char other)
    {
        var left = part();
        while (left is not null && Next.Kind == TokenKind.Sign && (Next.Sign == one || Next.Sign == other))
        {
            var sign = Take().Sign;
            left = part() is { } right ? new Combined(left, sign, right, left.At.Cover(right.At)) : null;
        }
        return left;
    }

    private FormulaNode? Single()
    {
        var token = Next;
        switch (token.Kind)
        {
            case TokenKind.Number:
                Take();
                return new Constant(token.Number, token.Unit, token.Decimals, token.At);
            case TokenKind.Word:
                return Name();
            case TokenKind.Open:
                return Bracket();
            case TokenKind.Sign when token.Sign == '−':
                return Minus();
            default:
                return Fail(FormulaProblem.ValueMissing, token.At, token.Kind == TokenKind.End ? "the formula ends where a value belongs" : $"a value is missing before {Written(token)}");
        }
    }

    /// <summary><c>sum of x</c>, <c>x</c>, or <c>cavity of brake-stack</c>.</summary>
    private FormulaNode? Name()
    {
        var first = Take();
        var name = first.Word;
        if (Next is not { Kind: TokenKind.Word, Word: "of" })
            return new Named(Gathering.Only, name, first.At);
        var of = Take();
        if (Next.Kind != TokenKind.Word)
            return Fail(FormulaProblem.ValueMissing, of.At, $"a name is missing behind {name} of");
        if (Gatherings.Find(name) is { } gathering)
            return Gathered(gathering, first);
        var owner = Take();
        return new Named(Gathering.Only, $"{name} of {owner.Word}", first.At.Cover(owner.At));
    }

    private Named? Gathered(Gathering gathering, FormulaToken first)
    {
        if (Name() is not Named { Gathering: Gathering.Only } named)
        {
            Fail(FormulaProblem.ValueMissing, first.At, $"{first.Word} of takes a name, one at a time");
            return null;
        }
        return named with { Gathering = gathering, At = first.At.Cover(named.At) };
    }

    private FormulaNode? Minus()
    {
        var sign = Take();
        if (++_depth > Deepest)
            return Fail(FormulaProblem.TooLong, sign.At, $"more than {Deepest} minus signs stand in a row");
        var inner = Single();
        _depth--;
        return inner is null ? null : new Negative(inner, sign.At.Cover(inner.At));
    }

    private FormulaNode? Bracket()
    {
        var open = Take();
        if (++_depth > Deepest)
            return Fail(FormulaProblem.TooLong, open.At, $"brackets are more than {Deepest} deep");
        if (Sum() is not { } inner)
            return null;
        if (Next.Kind != TokenKind.Close)
            return Next.Kind == TokenKind.End
                ? Fail(FormulaProblem.Bracket, open.At, "nothing closes this bracket")
                : Fail(FormulaProblem.OperatorMissing, Next.At, $"+, -, x or / is missing before {Written(Next)}");
        _depth--;
        return new Bracketed(inner, open.At.Cover(Take().At));
    }

    private FormulaToken Take() => _tokens[_at++];

    private FormulaNode? Fail(FormulaProblem problem, TextSpan at, string says)
    {
        _fault ??= new FormulaFault(problem, at, says);
        return null;
    }

    private string Written(FormulaToken token) => _text[token.At.Start..token.At.End];
}
