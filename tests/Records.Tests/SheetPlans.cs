using System.Globalization;
using System.Text;
using Witnessmark.Harness;
using Witnessmark.Language.Model;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Tests;

public sealed class SheetPlans
{
    [Fact]
    public void The_plan_of_the_stack_is_what_a_mechanic_expects_on_paper() =>
        Approved.Check("Records.Tests/Sheets/wb-40.approved.txt", Text(Demo.Plan));

    [Fact]
    public void A_common_part_has_a_plan_of_its_own() =>
        Approved.Check("Records.Tests/Sheets/wb-60.approved.txt", Text(SheetPlanner.Plan(Demo.Library.ScopeOf(Demo.Library.Procedure("WB-60")!), null)));

    [Fact]
    public void Nine_discs_of_three_points_are_twenty_seven_boxes_that_must_lie_in_the_good_band()
    {
        var discs = Demo.Plan.Steps.SelectMany(s => s.Asks).OfType<ReadingAsk>().Single(a => a.Key == "disc-thickness");
        Assert.Equal(["D1", "D2", "D3", "D4", "D5", "D6", "D7", "D8", "D9"], discs.Pieces);
        Assert.Equal(3, discs.Points);
        Assert.Equal("4.92 to 5.08 mm", discs.Accept.ToString());
        Assert.Equal(["thin", "thick"], discs.Stops);
    }

    private static readonly (string, Func<string, string>) WithoutTool =
        ("wheel-end/wb-40.md", t => t.Replace("perform: WB-60 group = backing-ring-bolts, wrench = TW-340", "tighten: backing-ring-bolts", StringComparison.Ordinal));

    [Fact]
    public void A_step_that_names_no_tool_means_the_one_wrench_that_reaches_the_torque()
    {
        var library = Demo.Changed([WithoutTool]);
        var asks = Demo.PlanOf(library).Steps.Last().Asks;
        Assert.Equal("TW-340", Assert.Single(asks.OfType<PassAsk>()).Wrench!.Id.Value);
        Assert.Equal(["TW-340"], Assert.Single(asks.OfType<ToolAsk>()).Tools);
        // what was inferred is in the hash by what it is, though no step names it
        var longer = Demo.Changed([WithoutTool, ("tools/crane-truck.yaml", t => t.Replace("length: 0.75 m", "length: 0.80 m", StringComparison.Ordinal))]);
        Assert.NotEqual(Demo.HashOf(library), Demo.HashOf(longer));
    }

    [Fact]
    public void Of_two_wrenches_that_reach_it_nobody_is_meant()
    {
        var library = Demo.Changed([WithoutTool, ("tools/crane-truck.yaml", t => t.Replace("wrenches:\n", "wrenches:\n  TW-750: {kind: torque wrench, range: 150 to 750 N·m, scale: 10 N·m, length: 1.2 m}\n", StringComparison.Ordinal))]);
        Assert.Null(Assert.Single(Demo.PlanOf(library).Steps.Last().Asks.OfType<PassAsk>()).Wrench);
    }

    [Fact]
    public void The_clearance_is_accepted_as_the_stack_says()
    {
        var clearance = Demo.Plan.Steps.SelectMany(s => s.Asks).OfType<WorkedAsk>().Single();
        Assert.Equal("2.8 to 3.6 mm", clearance.Accept.ToString());
    }

    [Fact]
    public void The_ladder_has_nineteen_positions_and_discs_and_plates_alternate()
    {
        var cells = Demo.Plan.Steps.SelectMany(s => s.Asks).OfType<StackAsk>().Single().Cells;
        Assert.Equal("E1 D1 P1 D2 P2 D3 P3 D4 P4 D5 P5 D6 P6 D7 P7 D8 P8 D9 E2", string.Join(' ', cells.Select(c => c.Label)));
        Assert.Equal("piston", cells[0].FacedTo);
        Assert.Equal("ring", cells[^1].FacedTo);
        // friction discs have their teeth inside, everything else outside: the columns of the ladder
        Assert.All(cells, c => Assert.Equal(c.Label[0] != 'D', c.Outer));
    }

    [Fact]
    public void The_ring_bolts_get_their_own_settings_through_the_common_part()
    {
        var ask = Demo.Plan.Steps.SelectMany(s => s.Asks).OfType<PassAsk>().Single();
        Assert.Equal("backing-ring-bolts", ask.Group.Id.Value);
        // 30 %, 60 % and 100 % of 235 N·m are 70.5, 141 and 235; the wrench has a mark every 5 N·m from 70 (by hand)
        Assert.Equal(["70 N·m", "140 N·m", "235 N·m", "235 N·m"], ask.Settings.Select(s => $"{s.Dial}"));
        Assert.Equal([false, false, false, true], ask.Settings.Select(s => s.Circular));
        // common practice for twelve bolts: across, then square to it
        Assert.Equal([1, 7, 4, 10], ask.Sequence[..4]);
    }

    [Fact]
    public void An_oiled_thread_is_never_told_to_be_wiped_dry_and_the_other_steps_keep_their_numbers()
    {
        var inner = Demo.Plan.Steps.Where(s => s.Code.Inner is not null).Select(s => s.Code.Inner!.Value);
        Assert.Equal([1, 2, 4, 5, 6, 7, 8, 9], inner);
    }

    [Fact]
    public void A_dry_thread_is_never_told_to_be_oiled()
    {
        var dry = Demo.With("machines/okr-34.yaml", "condition: oiled", "condition: dry");
        var plan = SheetPlanner.Plan(dry.ScopeOf(dry.Procedure("WB-40")!), null);
        Assert.Equal([1, 3, 4, 5, 6, 7, 8, 9], plan.Steps.Where(s => s.Code.Inner is not null).Select(s => s.Code.Inner!.Value));
    }

    [Theory]
    [InlineData("condition of backing-ring-bolts = oiled", false)]
    [InlineData("condition of backing-ring-bolts = dry", true)]
    [InlineData("lock-pins = all engaged", true)]
    public void A_step_prints_its_condition_unless_the_data_sheet_says_already_that_it_holds(string condition, bool printed)
    {
        const string stacking = "    - fit: brake-stack\n";
        var library = Demo.With("wheel-end/wb-40.md", stacking, $"{stacking}    - only-if: {condition}\n");
        var step = SheetPlanner.Plan(library.ScopeOf(library.Procedure("WB-40")!), null).Steps.Single(s => s.Asks.Any(a => a is StackAsk));
        Assert.Equal(printed, step.Guard is not null);
    }

    [Fact]
    public void The_cover_is_not_still_in_once_it_was_taken_off()
    {
        var sections = Demo.Plan.Sections;
        Assert.Contains("BC1", sections[1].StillIn.SelectMany(s => s.Tags));
        Assert.DoesNotContain("BC1", sections[2].StillIn.SelectMany(s => s.Tags));
        Assert.Contains("G1", sections[2].StillIn.SelectMany(s => s.Tags));
        Assert.DoesNotContain("G1", sections[3].StillIn.SelectMany(s => s.Tags));
    }

    [Fact]
    public void A_device_a_turn_is_as_many_devices_as_the_loop_has_turns()
    {
        const string both = "    - recover: G1, G2\n";
        var library = Demo.With("wheel-end/wb-40.md", both, "    - for-each: stud in 1 to 2\n    - recover: guide-studs 1\n");
        var plan = SheetPlanner.Plan(library.ScopeOf(library.Procedure("WB-40")!), null);
        Assert.Equal(["G1", "G2"], plan.Sections[2].StillIn.SelectMany(s => s.Tags).Where(t => t[0] == 'G'));
        Assert.DoesNotContain(plan.Sections[3].StillIn.SelectMany(s => s.Tags), t => t[0] == 'G');
    }

    [Fact]
    public void A_part_that_is_not_there_is_refused() => Assert.Throws<ArgumentException>(() => SheetPlanner.Plan(Demo.StackScope, "strip"));

    private static string Text(SheetPlan plan)
    {
        var text = new StringBuilder();
        foreach (var section in plan.Sections)
        {
            text.Append(CultureInfo.InvariantCulture, $"## {section.Section.Heading?.Value}\n");
            text.Append(CultureInfo.InvariantCulture, $"STILL IN {string.Join("; ", section.StillIn.Select(s => $"{s.Kind.Id} {string.Join(' ', s.Tags)}"))}\n\n");
            foreach (var step in section.Steps.SelectMany(s => s.Performed.Prepend(s)))
            {
                text.Append(CultureInfo.InvariantCulture, $"{step.Code} {step.Fills.In(step.Step.Name.Value)}\n");
                foreach (var ask in step.Asks)
                    text.Append(CultureInfo.InvariantCulture, $"    {ask.Key}: {Text(ask)}\n");
            }
            text.Append('\n');
        }
        return text.ToString();
    }

    private static string Text(Ask ask) => ask switch
    {
        CountAsk a => $"{a.Mark} {(a.AtLeast ? "at least " : "")}{a.Expected}",
        ReadingAsk a => $"{string.Join(' ', a.Pieces)} x {a.Points}, {a.Reading.Judge?.Value} {a.Accept}",
        LookAsk a => string.Join(" or ", a.Reading.Verdicts.Select(v => v.Value)),
        WorkedAsk a => $"{a.Value.Formula}, {a.Accept}",
        StackAsk a => string.Join(' ', a.Cells.Select(c => c.Label + (c.FacedTo is { } f ? $"({f})" : ""))),
        PassAsk a => $"{a.Wrench?.Id} {string.Join(", ", a.Settings.Select(s => $"{s.Dial}{(s.Circular ? " circular" : "")}"))}; {string.Join(' ', a.Sequence)}",
        SettingAsk a => $"{a.Dial}",
        ChoiceAsk a => string.Join(" or ", a.Outcomes),
        HoldAsk a => $"{string.Join("[ ]", a.Words)} by {a.By}",
        CheckAsk a => $"{a.Role} {a.Mode}",
        ToolAsk a => string.Join(' ', a.Tools),
        _ => "?",
    };
}
