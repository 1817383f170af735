using CsCheck;
using Witnessmark.Engineering.Formulas;
using Witnessmark.Engineering.Measuring;
using static Witnessmark.Engineering.Tests.Given;

namespace Witnessmark.Engineering.Tests.Formulas;

public class FormulaFaultTests
{
    [Theory]
    [InlineData("", FormulaProblem.Empty, "")]
    [InlineData("   ", FormulaProblem.Empty, "   ")]
    [InlineData("a + ", FormulaProblem.ValueMissing, "")]
    [InlineData("a + x b", FormulaProblem.ValueMissing, "x")]
    [InlineData("a + )", FormulaProblem.ValueMissing, ")")]
    [InlineData("sum of", FormulaProblem.ValueMissing, "of")]
    [InlineData("sum of (a + b)", FormulaProblem.ValueMissing, "of")]
    [InlineData("sum of mean of a", FormulaProblem.ValueMissing, "sum")]
    [InlineData("a b", FormulaProblem.OperatorMissing, "b")]
    [InlineData("(a b)", FormulaProblem.OperatorMissing, "b")]
    [InlineData("a (b)", FormulaProblem.OperatorMissing, "(")]
    [InlineData("(a + b", FormulaProblem.Bracket, "(")]
    [InlineData("a + b)", FormulaProblem.Bracket, ")")]
    [InlineData("a + 0,10 mm", FormulaProblem.DecimalComma, "0,10")]
    [InlineData("a + 0.10 mmm", FormulaProblem.UnknownUnit, "mmm")]
    [InlineData("a ^ 2", FormulaProblem.UnexpectedCharacter, "^")]
    [InlineData("99999999999999999999 mm", FormulaProblem.TooLarge, "99999999999999999999")]
    [InlineData("1.2.3 mm", FormulaProblem.TooLarge, "1.2.3")]
    public void A_text_that_is_no_formula_is_told_where(string text, FormulaProblem problem, string at)
    {
        var fault = Formula.Parse(text).Fault!;
        Assert.Equal(problem, fault.Problem);
        Assert.Equal(at, text[fault.At.Start..fault.At.End]);
    }

    [Theory]
    [InlineData("mean of cavity - 3 mm", FormulaProblem.UnknownName, "mean of cavity")]
    [InlineData("cavity-depth - 3 mm", FormulaProblem.SeveralValues, "cavity-depth")]
    [InlineData("mean of cavity-depth - 3 bar", FormulaProblem.KindsDiffer, "3 bar")]
    [InlineData("mean of cavity-depth - 3", FormulaProblem.KindsDiffer, "3")]
    [InlineData("start-oil + end-oil", FormulaProblem.KindsDiffer, "end-oil")]
    [InlineData("sum of start-oil", FormulaProblem.KindsDiffer, "sum of start-oil")]
    [InlineData("start-oil x 2", FormulaProblem.NoSuchUnit, "start-oil x 2")]
    [InlineData("3 MPa x 3 MPa", FormulaProblem.NoSuchUnit, "3 MPa x 3 MPa")]
    [InlineData("3 mm / (end-pressure - 3.90 MPa)", FormulaProblem.DividedByZero, "(end-pressure - 3.90 MPa)")]
    [InlineData("999999999 mm x 999999999", FormulaProblem.TooLarge, "999999999 mm x 999999999")]
    [InlineData("999999999 km / 0.00000001 mm", FormulaProblem.TooLarge, "999999999 km / 0.00000001 mm")]
    public void A_formula_that_cannot_be_worked_out_is_told_why(string text, FormulaProblem problem, string at)
    {
        var fault = Formula.Parse(text).Value!.Evaluate(FormulaTests.Value).Fault!;
        Assert.Equal(problem, fault.Problem);
        Assert.Equal(at, text[fault.At.Start..fault.At.End]);
        Assert.NotEmpty(fault.Says);
    }

    [Fact]
    public void A_formula_too_long_or_too_deep_is_refused()
    {
        Assert.Equal(FormulaProblem.TooLong, Formula.Parse(string.Join(" + ", Enumerable.Repeat("a", 600))).Fault!.Problem);
        Assert.Equal(FormulaProblem.TooLong, Formula.Parse(new string('(', 100) + "a" + new string(')', 100)).Fault!.Problem);
        Assert.Equal(FormulaProblem.TooLong, Formula.Parse(new string('-', 900) + "a").Fault!.Problem);
    }

    [Fact]
    public void Many_brackets_side_by_side_are_not_deep() =>
        Assert.True(Formula.Parse(string.Join(" + ", Enumerable.Repeat("(a)", 100))).Ok);

    /// <summary>Whatever is typed, there is a tree or one fault with a place in the text, and never a crash.</summary>
    [Fact]
    public void No_text_brings_it_down()
    {
        var pieces = new[] { "a", "sum of ", "mean of", "of", "(", ")", " + ", " - ", " x ", "/", "0.10", " mm", " MPa/°C", "1,5", "%", " ", "²", "999999999", "-", "0.000000001 km", "cavity of brake-stack", "start-oil" };
        Gen.Int[0, pieces.Length - 1].Select(i => pieces[i]).Array[0, 14].Select(string.Concat).Sample(
            text =>
            {
                var parsed = Formula.Parse(text);
                if (parsed.Fault is { } fault)
                    return fault.At.Start >= 0 && fault.At.End <= text.Length && fault.At.Start <= fault.At.End;
                var worked = parsed.Value!.Evaluate(name => name == "a" ? Measured.Of(Q("999999999 mm")) : FormulaTests.Value(name));
                return worked.Ok ? worked.Value!.Line.Contains('=') : worked.Fault!.At.End <= text.Length;
            },
            iter: 20_000);
    }
}
