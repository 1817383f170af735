using System.Collections.Immutable;
using Witnessmark.Engineering.Tightening;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;

namespace Witnessmark.Checking.Rules.Torque;

/// <summary>A group whose torque can be held against its bolts: thread, class and nut factor are known.</summary>
internal sealed record TorqueCase(FastenerGroup Group, Located<Toleranced> Torque, TorqueWindow Window, HouseLimits Limits)
{
    private const int MostTries = 1000;

    public static IEnumerable<TorqueCase> Of(Machine machine, Library library)
    {
        var limits = library.Workshop.Limits;
        foreach (var group in machine.Fasteners)
            if (group.Torque is { Value.Target.Unit.Kind: "torque" } torque && TorqueWindow.For(group, limits) is { } window)
                yield return new TorqueCase(group, torque, window, limits);
    }

    /// <summary>The target is outside the window and the same number in another unit is inside.</summary>
    public UnitSlip? Slip => UnitSlip.Find(Torque.Value.Target, Window);

    public bool GoesAbove => Torque.Value.High.CompareTo(Window.High.Value) > 0;

    public bool GoesBelow => Torque.Value.Low.CompareTo(Window.Low.Value) < 0;

    /// <summary><c>M16x2 10.9, oiled, k 0.15</c></summary>
    public string Bolt =>
        $"{Group.Thread!.Value} {Group.Strength}{(Group.Condition is { } condition ? $", {condition.Value}" : "")}, k {Group.NutFactor!.Value}";

    /// <summary>The window in the unit of the torque: <c>203 to 265 N·m</c>.</summary>
    public string WindowText => $"{Figure(Window.Low.Value).NumberText} to {Figure(Window.High.Value)}";

    /// <summary>What to do with a torque outside the window.</summary>
    public string PutRight => FittingFrom(Window.Target.Value) is { } fits
        ? $"`{fits}` fits: {WindowText} is the window for {Bolt}. If the torque is right, look up thread, class and k."
        : $"{WindowText} is the window for {Bolt}; the tolerance must stay inside. If the torque is right, look up thread, class and k.";

    public decimal ShareOfProof(Quantity torque) => Window.ShareOfProof(torque) ?? 0;

    /// <summary>From area to torque at proof, for under the finding.</summary>
    public ImmutableArray<string> Worked =>
    [
        $"stress area: {Window.StressArea.Line}",
        $"proof load: {Window.ProofLoad.Line}",
        $"torque at proof load: {Window.TProof.Line}",
    ];

    /// <summary>The torque nearest below <paramref name="from"/> that fits window and scatter with the tolerance as written, or null.</summary>
    public Toleranced? FittingFrom(Quantity from)
    {
        var step = Step(Torque.Value.Target.Decimals);
        var number = Torque.Value.Target with { Number = from.In(Torque.Value.Target.Unit).Number };
        number = number.RoundedTo(Torque.Value.Target.Decimals);
        for (var tries = 0; tries < MostTries && number.Number > 0; tries++, number = number with { Number = number.Number - step })
            if (Fits(Torque.Value with { Target = number, Beside = null }) is { } fits)
                return fits;
        return null;
    }

    /// <summary>How much of proof load the bolts may reach with a torque, scatter included; null when that makes no sense.</summary>
    public decimal? Reaches(Toleranced torque) => PreloadScatter.Of(Window, torque, Limits)?.RootSumSquare.Value;

    private Toleranced? Fits(Toleranced torque) =>
        torque.High.CompareTo(Window.High.Value) <= 0 && torque.Low.CompareTo(Window.Low.Value) >= 0 && Reaches(torque) <= Limits.TightenedProof
            ? torque
            : null;

    /// <summary>Rounded as the torque was written, and in its unit.</summary>
    private Quantity Figure(Quantity torque) => torque.In(Torque.Value.Target.Unit).RoundedTo(Torque.Value.Target.Decimals);

    private static decimal Step(int decimals)
    {
        var step = 1m;
        for (var i = 0; i < decimals; i++)
            step /= 10;
        return step;
    }
}
