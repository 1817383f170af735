using System.Text;
using Witnessmark.Harness;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Records;

namespace Witnessmark.Reading.Tests.Data;

/// <summary>What a sheet says is what the model holds: looked up by eye in the demo and the trial workshop.</summary>
public sealed class BindingTests
{
    private static readonly Library Demo = WorkshopReader.Read(Repo.Files(Repo.OneBrake), new FindingList());
    private static readonly Library Trial = WorkshopReader.Read(Repo.Files(Repo.Trial), new FindingList());

    private static Machine Hauler => Demo.Machines.Find("okr-34")!;

    [Fact]
    public void A_fastener_group_has_its_thread_class_and_torque()
    {
        var bolts = Hauler.Fasteners.Find("backing-ring-bolts")!;
        Assert.Equal(12, bolts.Count?.Value);
        Assert.Equal("M16x2", bolts.Thread?.Value.ToString());
        Assert.Equal("10.9", bolts.PropertyClass?.Value);
        Assert.Equal("10.9", bolts.PropertyClass?.At.Text);
        Assert.Equal("235 ± 12 N·m", bolts.Torque?.Value.ToString());
        Assert.Equal(0.15m, bolts.NutFactor?.Value);
    }

    [Fact]
    public void A_stack_is_built_as_its_lines_say()
    {
        var stack = Hauler.Stacks.Find("brake-stack")!;
        var positions = stack.Positions().ToList();
        Assert.Equal(19, positions.Count);
        Assert.Equal(("end-plate", "piston"), (positions[0].Piece.Part.Value, positions[0].Piece.FacedTo?.Value));
        Assert.Equal(("end-plate", "ring"), (positions[^1].Piece.Part.Value, positions[^1].Piece.FacedTo?.Value));
        Assert.Equal(9, positions.Count(p => p.Piece.Part.Value == "friction-disc"));
        Assert.Equal("2.8 to 3.6 mm", stack.Clearance?.Value.ToString());
        Assert.Equal("friction-disc", stack.Order[2].Pieces[1].Part.At.Text);
    }

    [Fact]
    public void Shims_have_their_sizes_and_what_a_thicker_pack_does()
    {
        var shims = Hauler.Shims.Find("hub-shims")!;
        Assert.Equal("0.05 mm, 0.10 mm, 0.13 mm, 0.25 mm, 0.50 mm, 0.75 mm", string.Join(", ", shims.Sizes.Select(s => s.Value)));
        Assert.Equal((5, "looser", "0.05 to 0.15 mm", "0.10 mm"), (shims.Most?.Value, shims.ThickerIs?.Value, $"{shims.Play?.Value}", $"{shims.Target?.Value}"));
        Assert.Equal(("1.85 mm", "0.00 to 0.60 mm"), ($"{shims.AsBuilt?.Value}", $"{shims.Plausible?.Value}"));
    }

    [Fact]
    public void A_reading_has_its_bands_and_a_look_its_verdicts()
    {
        var disc = Hauler.Readings.Find("disc-thickness")!;
        Assert.Equal("friction-disc", disc.Of?.Value);
        Assert.Equal(["thin", "good", "thick"], disc.Bands.Select(b => b.Name.Value));
        Assert.True(disc.Bands[1].Range.Value.Contains(Quantity.Of(4.92m, "mm")));
        var shims = Trial.Machines.Find("okr-34")!.Readings.Find("shim-thickness")!;
        Assert.Equal((6, true), (shims.Points?.Value, shims.UpToPoints));
        var bore = Trial.Machines.Find("okr-34")!.Readings.Find("piston-bore")!;
        Assert.True(bore.IsLook);
        Assert.Equal(["sound", "scored"], bore.Results);
    }

    [Fact]
    public void A_worked_value_can_be_accepted_as_the_clearance_of_a_stack()
    {
        var clearance = Hauler.Values.Find("running-clearance")!;
        Assert.Equal("brake-stack", clearance.AcceptAsClearanceOf?.Value);
        Assert.Equal("brake-stack", clearance.AcceptAsClearanceOf?.At.Text);
        Assert.Null(clearance.Accept);
    }

    [Fact]
    public void A_hazard_names_the_work_that_meets_it()
    {
        var pinch = Hauler.Hazards.Find("pinched-fingers")!;
        Assert.Equal(SignalWord.Warning, pinch.RightWord);
        Assert.Equal(["fit brake-stack", "fit backing-ring"], pinch.MetBy.Select(m => $"{m.Value.Verb.Spelled()} {m.Value.Thing.Value}"));
        Assert.Equal("brake-stack", pinch.MetBy[0].Value.Thing.At.Text);
    }

    [Fact]
    public void A_state_knows_where_it_is_and_what_ends_it()
    {
        var machine = Trial.Machines.Find("okr-34")!;
        var accumulators = machine.States.Find("accumulators")!;
        Assert.Equal(["charged", "proved-zero"], accumulators.Values.Select(v => v.Value));
        Assert.Single(accumulators.LostWhen);
        Assert.Equal(["stop above 15 min", "change of people"], accumulators.LostAfter.Select(a => a.At.Text));
        Assert.Equal(15m, Assert.IsType<Resting>(accumulators.LostAfter[0]).Longer.Value.Number);
        Assert.Equal(["wheel-end", "line"], machine.States.Find("cooling-line")!.AtEach.Select(a => a.Value));
        Assert.Equal(["stopped", "running"], machine.States.Find("engine")!.Values.Select(v => v.Value));
        Assert.Equal(5, machine.Conditions.Find("made-safe")!.All.Length);
    }

    [Fact]
    public void An_interlock_knows_what_it_waits_for_and_what_it_asks()
    {
        var rules = Trial.Machines.Find("okr-34")!.Interlocks;
        Assert.Equal(["brake-line open", "cooling-line open", "planet-cover removed"], rules.Find("S08")!.BeforeAny.OfType<Becoming>().Select(b => $"{b.Thing} {b.Value}"));
        Assert.Equal("plates = reuse", rules.Find("S17b")!.OnlyWhen!.At.Text);
        Assert.Equal(2, rules.Find("S01")!.Needed!.All.Length);
        Assert.Equal([FactWord.Lift, FactWord.Land], Assert.IsType<StepsThat>(rules.Find("S05b")!.EveryStep).Verbs);
        Assert.Equal(2, rules.Find("S05b")!.HasAll[^1].People);
        Assert.Equal("shim-bag", rules.Find("S15a")!.HasAll[0].Thing!.Value.Value);
        Assert.Equal("lock-pins", Assert.IsType<StepsThatChange>(rules.Find("S18b")!.EveryStep).Thing.Value);
        Assert.Equal("leak-check", Assert.IsType<Testing>(Assert.Single(rules.Find("S30")!.BeforeAny)).Test.Value);
        Assert.Equal(["accumulators", "support", "wheel-chocks"], rules.Find("S36")!.ProvedAgain.Select(p => p.Value));
    }

    [Fact]
    public void The_house_limits_are_those_of_the_workshop_file()
    {
        Assert.Equal((0.20m, 1.00m), Demo.Workshop.Limits.WrenchShare);
        Assert.Equal((0.65m, 0.85m), Demo.Workshop.Limits.TorqueWindow);
        Assert.Equal("23 kg", Demo.Workshop.Limits.LiftByHand.ToString());
        Assert.Equal([(0.30m, false), (0.60m, false), (1.00m, false), (1.00m, true)], Demo.Workshop.Passes.Select(p => (p.Value.Share, p.Value.Circular)));
        Assert.Equal("___ seated", Demo.Workshop.Calls.Find("plate-seated")!.Answer);
    }

    [Fact]
    public void A_tool_list_has_ranges_and_the_chart_of_the_crane()
    {
        var tools = Demo.ToolLists.Find("crane-truck")!;
        Assert.Equal("70 to 340 N·m", tools.Wrenches.Find("TW-340")!.Range?.Value.ToString());
        Assert.Equal(["3.0 m 2200 kg", "4.0 m 1600 kg", "5.0 m 1200 kg"], tools.Lifting.Find("crane")!.Chart.Select(c => $"{c.Radius} {c.Capacity}"));
        Assert.True(tools.Gauges.Find("micrometer-25")!.Calibrated?.Value);
    }

    [Fact]
    public void A_sign_off_keeps_initials_serials_and_readings_as_they_were_typed()
    {
        var findings = new FindingList();
        var path = Repo.Path("tests", "Reading.Tests", "Cases", "Data", "a-sign-off-filled-in.yaml");
        var record = SignOffReader.Read(RawFile.Of("records/a.yaml", Encoding.UTF8.GetBytes(File.ReadAllText(path))), findings)!;
        Assert.Empty(findings.InReadingOrder());
        Assert.Equal(("14", "0417", "12405 h"), (record.Unit?.Value, record.Serial?.Value, record.Hours?.Value.ToString()));
        Assert.Equal(["20/5", "12/4", "24/8"], record.Entries.Select(e => e.Step.Value));
        Assert.Equal("NO", Assert.IsType<DataText>(record.Entries[2].Find("by")).Text);
        Assert.Equal("4.98 5.02 5.01 mm", Assert.IsType<DataText>(Assert.IsType<DataMap>(record.Entries[1].Find("readings")).Find("D1")!.Value).Text);
        Assert.Equal("MO", record.Crew[1].ObservedBy?.Value);
        Assert.Null(record.Stops);
        Assert.Equal("none, MO", record.Deviations?.Value);
        Assert.Equal("wheel nut re-torque", Assert.Single(record.Owed).Value);
        Assert.Null(record.Release?.By);
    }
}
