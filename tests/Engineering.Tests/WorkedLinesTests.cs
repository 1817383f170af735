using System.Text;
using Witnessmark.Engineering.Fasteners;
using Witnessmark.Engineering.Formulas;
using Witnessmark.Engineering.Lifting;
using Witnessmark.Engineering.Stacks;
using Witnessmark.Engineering.Tests.Formulas;
using Witnessmark.Engineering.Tests.Stacks;
using Witnessmark.Engineering.Tightening;
using Witnessmark.Harness;
using Witnessmark.Language.Model;
using static Witnessmark.Engineering.Tests.Given;

namespace Witnessmark.Engineering.Tests;

public class WorkedLinesTests
{
    private readonly StringBuilder _text = new();

    [Fact]
    public void Worked_lines_read_as_a_mechanic_would_write_them()
    {
        Torque();
        Wrenches();
        Sling();
        Stack();
        Formulas();
        Approved.Check("Engineering.Tests/Approved/worked-lines.txt", _text.ToString());
    }

    private void Torque()
    {
        Title("Backing ring, M16x2 10.9, K 0.15");
        var window = TorqueWindow.For(Group("M16x2", "10.9", 0.15m), HouseLimits.Default)!;
        Line("stress area", window.StressArea.Line);
        Line("proof load", window.ProofLoad.Line);
        Line("torque at proof", window.TProof.Line);
        Line("window from", window.Low.Line);
        Line("window to", window.High.Line);
        Line("preload aimed at", window.Preload.Line);
        Line("target", window.Target.Line);
        Line("preload at 235 N·m", window.PreloadAt(Q("235 N·m"))!.Line);
        var scatter = PreloadScatter.Of(window, T("235 ± 12 N·m"), HouseLimits.Default)!;
        Line("likely", scatter.RootSumSquare.Line);
        Line("at worst", scatter.WorstCase.Line);
        Line("written in lbf·ft", UnitSlip.Find(Q("235 lbf·ft"), window)!.Line);
        Title("Small bolt, M8x1 8.8, K 0.18");
        var small = TorqueWindow.For(Group("M8x1", "8.8", 0.18m), HouseLimits.Default)!;
        Line("stress area", StressArea.Of(Thread("M8x1"))!.Line);
        Line("proof load", small.ProofLoad.Line);
        Line("target", small.Target.Line);
    }

    private void Wrenches()
    {
        Title("Wrenches");
        Line("too large", WrenchRange.Check(Wrench("150 to 750 N·m"), Q("45 N·m"), HouseLimits.Default)!.Line);
        Line("crow-foot in line", Adapter.Setting(Q("455 N·m"), Q("1.10 m"), Q("120 mm"), Q("0 deg"))!.Line);
        Line("crow-foot at 45°", Adapter.Setting(Q("455 N·m"), Q("1.10 m"), Q("0.12 m"), Q("45 deg"))!.Line);
        TorquePass[] passes = [new(0.30m, false), new(0.60m, false), new(1m, false), new(1m, true)];
        foreach (var pass in Passes.Plan(T("235 ± 12 N·m"), passes, Wrench("50 to 250 lbf·ft", "5 lbf·ft", "0.75 m"), CrowFoot("60 mm")))
            Line($"pass {pass.Number}", $"{pass.Aim.Line}; {pass.Setting.Line}; dial {pass.Shown}");
    }

    private void Sling()
    {
        Title("Slings");
        Line("ring on two legs", LegLoad.Of(Q("43 kg"), 2, Q("60 deg"))!.Mass.Line);
        Line("as a force", LegLoad.Of(Q("43 kg"), 2, Q("60 deg"))!.Force.Line);
        Line("flat, of four legs", LegLoad.Of(Q("0.312 t"), 4, Q("30 deg"))!.Mass.Line);
        Line("one leg", LegLoad.Of(Q("38 kg"), 1, null)!.Mass.Line);
    }

    private void Stack()
    {
        Title("Disc stack");
        var height = StackHeight.Of(StackTests.BrakeStack, StackTests.Find)!;
        Line("height", height.Height.Line);
        Line("clearance", height.Clearance.Line);
        Line("at worst", height.WorstCase.Line);
        Line("likely", height.RootSumSquare.Line);
        var travel = WearTravel.Of(StackTests.BrakeStack, StackTests.Find)!;
        Line("travel, all worn", travel.Travel.Line);
        Line("allowed", travel.Allowed.Line);
    }

    private void Formulas()
    {
        Title("Formulas");
        Line("in words", Formula.Parse(FormulaTests.Clearance).Value!.InWords());
        Line("with numbers", FormulaTests.Worked(FormulaTests.Clearance).Line);
        Line("drop", FormulaTests.Worked("start-pressure - end-pressure - 0.048 MPa/degC x (start-oil - end-oil)").Line);
        Line("shims", FormulaTests.Worked("sum of shim-thickness - (mean of end-play - 0.10 mm)").Line);
        Line("below zero", FormulaTests.Worked("82.96 mm - mean of cavity-depth").Line);
        Line("odd mean", Formula.Parse("mean of cavity-depth / 3 + 1 mm").Value!.Evaluate(FormulaTests.Value).Value!.Line);
    }

    private void Title(string title) => _text.Append(_text.Length > 0 ? "\n" : "").Append(title).Append('\n');

    private void Line(string what, string line) => _text.Append($"  {what,-20} {line}\n");
}
