using Witnessmark.Language.Wording;

namespace Witnessmark.Engineering.Formulas;

/// <summary>A formula as it is printed: in words before anything is measured, with its numbers after.</summary>
internal static class FormulaLine
{
    public static string InWords(FormulaNode node, Func<string, string?> title, Func<string, string> gathered) => node switch
    {
        Named named => (named.Gathering.Word() is { Length: > 0 } word ? gathered(word) + " " : "") + (title(named.Name) ?? DeclaredName.Spoken(named.Name)),
        Constant { Unit: null } constant => Figures.Fixed(constant.Number, constant.Decimals),
        Constant constant => $"{Figures.Fixed(constant.Number, constant.Decimals)} {constant.Unit}",
        Negative negative => $"−{InWords(negative.Inner, title, gathered)}",
        Bracketed bracketed => $"({InWords(bracketed.Inner, title, gathered)})",
        Combined combined => $"{InWords(combined.Left, title, gathered)} {combined.Sign} {InWords(combined.Right, title, gathered)}",
        _ => "",
    };

    /// <summary>
    /// The numbers put in, and with brackets a second time with each bracket worked out: the way it is done by hand. Units stand
    /// beside the numbers only where they are not all the same.
    /// </summary>
    public static string Of(FormulaNode root, FormulaRun run)
    {
        var units = Leaves(root).Select(l => run.Found(l).Unit?.Symbol).OfType<string>().Append(run.Found(root).ToQuantity().Unit.Symbol);
        var withUnits = units.Distinct(StringComparer.Ordinal).Skip(1).Any();
        var full = Numbers(root, run, withUnits, through: true);
        var reduced = Numbers(root, run, withUnits, through: false);
        return full == reduced || root is Bracketed ? full : $"{full} = {reduced}";
    }

    /// <param name="through">Brackets in full, not as what they come to.</param>
    private static string Numbers(FormulaNode node, FormulaRun run, bool withUnits, bool through) => node switch
    {
        Negative negative => $"−{Numbers(negative.Inner, run, withUnits, through)}",
        Bracketed bracketed when through => $"({Numbers(bracketed.Inner, run, withUnits, through)})",
        Combined combined => $"{Numbers(combined.Left, run, withUnits, through)} {combined.Sign} {Numbers(combined.Right, run, withUnits, through)}",
        _ => Number(run.Found(node), withUnits),
    };

    private static string Number(Amount amount, bool withUnits)
    {
        var text = amount.NumberText.Replace('-', '−');
        return withUnits && amount.Unit is not null ? $"{text} {amount.Unit}" : text;
    }

    private static IEnumerable<FormulaNode> Leaves(FormulaNode node) => node switch
    {
        Negative negative => Leaves(negative.Inner),
        Bracketed bracketed => Leaves(bracketed.Inner),
        Combined combined => Leaves(combined.Left).Concat(Leaves(combined.Right)),
        _ => [node],
    };
}
