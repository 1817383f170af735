using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Engineering.Shims;

/// <summary>
/// How a pack of shims sets a play: new pack = old pack − (play − target) where a thicker pack is looser, + where it is
/// tighter. Which of the two, and every number, belongs to the machine: published manuals have the same rule with other constants and either sign.
/// </summary>
public sealed record ShimSetting(ShimStock Stock, bool ThickerIsLooser, QuantityRange Play, Quantity Target)
{
    private const string Looser = "looser";

    /// <summary>False: between two packs next to each other a play can fall through.</summary>
    public bool WindowTakesAStep =>
        Play is not { Low.Value: { } low, High.Value: { } high } || (IsSound && high.In(Stock.Unit).Number - low.In(Stock.Unit).Number >= Stock.Step.Number);

    private bool IsSound => Sensible.Is(Target, "length") && Sound(Play.Low) && Sound(Play.High);

    /// <summary>Null when a size, the direction or the play is missing or is no length.</summary>
    public static ShimSetting? Of(ShimItem item)
    {
        if (item is not { ThickerIs.Value: var direction, Play.Value: var play } || (item.Target?.Value ?? Middle(play)) is not { } target)
            return null;
        if (ShimStock.Of(item) is not { } stock)
            return null;
        var setting = new ShimSetting(stock, direction == Looser, play, target);
        return setting.IsSound ? setting : null;
    }

    /// <summary>
    /// The pack with the fewest pieces that keeps the play in its window; of those the one nearest to the target, of two as near
    /// the looser one (too tight runs hot: common practice, no source). A pack has at least one shim.
    /// </summary>
    /// <param name="old">Thickness of the pack that is in; zero when none is in.</param>
    /// <param name="play">Measured with it; below zero where parts press on each other.</param>
    /// <returns>Null when anything is no length that a machine has.</returns>
    public ShimChoice? Choose(Quantity old, Quantity play)
    {
        if (!IsSound || !Sensible.Is(old, "length") || old.Number < 0 || !Sensible.Is(play, "length"))
            return null;
        var (pack, found, unit) = (old.In(Stock.Unit), play.In(Stock.Unit), Stock.Unit);
        var aim = Target.In(unit);
        var wanted = new Quantity(pack.Number + Way(found.Number - aim.Number), unit);
        var window = Packs(pack.Number, found.Number);
        var line = $"{pack.NumberText} {(ThickerIsLooser ? '−' : '+')} ({Signed(found)} − {Signed(aim)}) = {Figures.Signed(wanted)}";
        var best = Stock.Sums.Where(s => window.Contains(new Quantity(s, unit)))
            .Select(sum => (decimal?)sum)
            .MinBy(sum => (Stock.Count(sum!.Value), Math.Abs(sum.Value - wanted.Number), ThickerIsLooser ? -sum.Value : sum.Value));
        return new ShimChoice(new(wanted, line), window, best is { } sum ? Made(sum, pack, found) : null)
        {
            Refusal = best is null ? ShimRefusal.Of(Stock, window) : null,
        };
    }

    private ShimPackMade Made(decimal sum, Quantity old, Quantity play)
    {
        var made = new Quantity(sum, Stock.Unit);
        var pieces = Stock.Pieces(made)!.Value;
        var then = play with { Number = play.Number - Way(sum - old.Number) };
        var line = $"{Signed(play)} {(ThickerIsLooser ? '+' : '−')} ({made.NumberText} − {old.NumberText}) = {Figures.Signed(then)}";
        return new ShimPackMade(pieces, ShimPackMade.SumOf(pieces), new(then, line));
    }

    // a looser play wants a thinner pack where thicker is looser
    private decimal Way(decimal tooLoose) => ThickerIsLooser ? -tooLoose : tooLoose;

    private QuantityRange Packs(decimal old, decimal play)
    {
        Bound? At(Bound? end) => end is { } e ? e with { Value = new Quantity(old + Way(play - e.Value.In(Stock.Unit).Number), Stock.Unit) } : null;
        return ThickerIsLooser ? new(At(Play.Low), At(Play.High)) : new(At(Play.High), At(Play.Low));
    }

    private static string Signed(Quantity quantity) => quantity.NumberText.Replace('-', '−');

    private static bool Sound(Bound? end) => end is null || Sensible.Is(end.Value.Value, "length");

    private static Quantity? Middle(QuantityRange play) =>
        play is { Low.Value: { } low, High.Value: { } high } && Sound(play.Low) && Sound(play.High) ? low with { Number = (low.Number + high.In(low.Unit).Number) / 2 } : null;
}
