using System.Text;
using System.Text.RegularExpressions;
using Witnessmark.Harness;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading;
using Witnessmark.Reading.Records;
using Witnessmark.Records.Hashing;
using Witnessmark.Records.Issuing;
using Witnessmark.Records.Receiving;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Messages;

namespace Witnessmark.Records.Tests;

/// <summary>Sign-offs of a sheet with a loop, decisions, endings and parts that are performed under a condition.</summary>
public sealed class FlowRecords
{
    private static readonly Library Library = WorkshopReader.Read(Repo.Files(Repo.Path("tests", "Rendering.Tests", "Cases", "pedal")), new FindingList());

    private static readonly Scope Scope = Library.ScopeOf(Library.Procedure("WB-94")!);

    private static readonly ProcedureHash Hash = ProcedureHash.Of(Library, Scope.Procedure);

    private static readonly string Blank = BlankSignOff.Write(
        SheetPlanner.Plan(Scope, null), Demo.Marked(new CopyIdentity(Hash, "14", "0417", "CL", "2031-06-11T06:40+02:00", "RK")));

    /// <summary>The fault shows, RL is the wheel end, CR was never capped.</summary>
    private static readonly (string Step, string Lines)[] Found =
    [
        ("2", "pedal-pressure: 2.90 MPa; pedal-hold: failed; tool: test-gauge-10; by: MO"),
        ("3", "alarm: shown; by: MO; at: 2031-06-11T07:10+02:00"),
        ("5", "cap-stamps/CL: right; cap-stamps/RL: right"),
        ("6", "pedal-pressure/CL: 2.90 MPa; pedal-pressure/RL: 3.95 MPa; pedal-hold/CL: failed; pedal-hold/RL: passed; tool: test-gauge-10"),
        ("7", "by: MO; checked-by: TV; at: 2031-06-11T08:30+02:00"),
        ("8", "static-hold: passed"),
        ("10", "end: fault-named; hold: RL; by: MO; checked-by: TV; at: 2031-06-11T08:50+02:00"),
    ];

    [Fact]
    public void The_blank_has_a_line_for_each_turn_and_asks_how_the_work_ended() =>
        Approved.Check("Records.Tests/Sheets/wb-94-blank.approved.yaml", Regex.Replace(Regex.Replace(Blank, "(?m)^hash: .*$", "hash: {hash}"), "(?m)^copy: .*$", "copy: {copy}"));

    [Fact]
    public void A_loop_that_ended_when_it_found_what_it_looked_for_lacks_nothing() => Assert.Equal("", Reasons(Found));

    [Fact]
    public void A_turn_that_nobody_worked_may_stay_empty_only_where_the_loop_ends_before() =>
        Assert.Equal("Step 6 (Hold the pedal down) has no pedal pressure and pedal hold yet.", Reasons(
            With("6", "tool: test-gauge-10")));

    [Fact]
    public void Work_that_ended_at_a_step_is_asked_nothing_behind_it()
    {
        var result = Hold(
        [
            ("2", "pedal-pressure: 3.95 MPa; pedal-hold: passed; tool: test-gauge-10; by: MO"),
            ("3", "alarm: not-shown; by: MO; at: 2031-06-11T07:10+02:00"),
            ("4", "end: no-fault; by: MO; at: 2031-06-11T07:20+02:00"),
        ]);
        Assert.Equal("", Said(result));
        Assert.EndsWith("Ended at step 4: no fault, hand it up, do not go on.", ReceptionText.Verdict(result), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_performed_under_a_condition_is_not_asked_where_the_choice_says_no() =>
        Assert.DoesNotContain(Held.Of(Read(Found), Library, []).Required, a => a.Step.Code.Plain.StartsWith('4'));

    [Fact]
    public void An_outcome_of_no_turn_is_not_guessed() =>
        Assert.Equal("Pedal hold is one text, which cannot be read as a line for each of CL to CR.", Reasons(
            With("6", "pedal-pressure/CL: 2.90 MPa; pedal-pressure/RL: 3.95 MPa; pedal-hold: passed; tool: test-gauge-10")));

    [Fact]
    public void A_turn_that_the_loop_does_not_have_is_found() =>
        Assert.Equal("CX is not asked in pedal hold of step 6 (Hold the pedal down).", Reasons(
            With("6", "pedal-pressure/CL: 2.90 MPa; pedal-pressure/RL: 3.95 MPa; pedal-hold/CL: failed; pedal-hold/CX: passed; tool: test-gauge-10")));

    [Fact]
    public void A_verdict_to_stop_at_is_found_in_its_turn() =>
        Assert.Equal("Cap stamps is wrong, and the work went on.", Reasons(With("5", "cap-stamps/CL: right; cap-stamps/RL: wrong")));

    [Fact]
    public void What_is_done_in_a_performed_part_ends_that_part_alone()
    {
        var search = "    - perform: WB-94\n";
        var files = Repo.Files(Repo.Path("tests", "Rendering.Tests", "Cases", "pedal")).Append(RawFile.Of("wb-95.md", Encoding.UTF8.GetBytes(Job(search)))).ToList();
        var library = WorkshopReader.Read(files, new FindingList());
        var plan = SheetPlanner.Plan(library.ScopeOf(library.Procedure("WB-95")!), null);
        Assert.Equal(["1.6 ends all", "1.14 ends the part"], plan.Steps.SelectMany(s => s.Asks.OfType<ChoiceAsk>().Where(a => a.Ends).Select(a => $"{s.Code.Plain} {(a.EndsPart ? "ends the part" : "ends all")}")));
        Assert.Equal("2", Behind(library, plan, "1.14", "fault-named"));
        Assert.Equal("", Behind(library, plan, "1.6", "no-fault"));
    }

    /// <summary>Steps that are still asked behind an ending that was struck.</summary>
    private static string Behind(Library library, SheetPlan plan, string step, string ending)
    {
        var (entries, findings) = (SheetEntries.Of(plan), new FindingList());
        var at = entries.Single(e => e.Step.Code.Plain == step);
        var signOff = SignOffReader.Read(RawFile.Of("records/x.yaml", Encoding.UTF8.GetBytes($"record: x\nprocedure: WB-95\nentries:\n  - step: {at.Step.Code}\n    end: {ending}\n")), findings)!;
        var required = Held.Of(signOff, library, []).Required.ToList();
        return string.Join(' ', entries.SkipWhile(e => e.Step.Code != at.Step.Code).Skip(1).Where(e => required.Any(r => r.Step.Code == e.Step.Code)).Select(e => e.Step.Code.Plain));
    }

    private static string Job(string perform) => $"""
        ---
        job: WB-95
        title: Find it and tell
        version: 1.0.0
        status: draft
        machine: okr-34
        uses:
          WB-94: 1.0.0
        crew: {"{mechanic: 1, operator: 1}"}
        ---

        # Find it and tell

        - by: mechanic

        1. **Find it.**
        {perform}
        2. **Tell the supervisor.**
            - hold: told at ___
        """;

    [Fact]
    public void The_turns_are_in_the_hash() => Assert.NotEqual(Hash.Hex, HashWith("wheel-end: [CL, CR, RL]", "wheel-end: [CL, CR, RL, RR]"));

    private static string HashWith(string from, string to)
    {
        var files = Repo.Files(Repo.Path("tests", "Rendering.Tests", "Cases", "pedal"))
            .Select(f => RawFile.Of(f.Path, Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(f.Bytes.Span).Replace(from, to, StringComparison.Ordinal)))).ToList();
        var library = WorkshopReader.Read(files, new FindingList());
        return ProcedureHash.Of(library, library.Procedure("WB-94")!).Hex;
    }

    private static (string Step, string Lines)[] With(string step, string lines) => [.. Found.Select(f => f.Step == step ? (step, lines) : f)];

    private static string Reasons((string Step, string Lines)[] typed) => Said(Hold(typed));

    private static ReceptionResult Hold((string Step, string Lines)[] typed) => Reception.Hold(Read(typed), Library, []);

    /// <summary>What is said about entries; the head has its own tests.</summary>
    private static string Said(ReceptionResult result) => string.Join('\n', result.Findings
        .Where(f => ReasonSet.Entries.Any(r => r.Info.Name == f.Rule.Name) && f.Rule.Name is not ("person-unknown" or "release-missing" or "stops-unsigned" or "deviations-unsigned"))
        .Select(f => f.Found));

    /// <summary>The blank with these lines typed into its entries: <c>key: value</c>, or <c>key/turn: value</c>.</summary>
    private static SignOff Read((string Step, string Lines)[] typed)
    {
        var head = Blank[..Blank.IndexOf("entries:", StringComparison.Ordinal)];
        var foot = Blank[Blank.IndexOf("\nstops:", StringComparison.Ordinal)..];
        var codes = SheetEntries.Of(SheetPlanner.Plan(Scope, null)).ToDictionary(e => e.Step.Code.Plain, e => e.Step.Code.ToString());
        var text = new StringBuilder(head).Append("entries:\n");
        foreach (var (step, lines) in typed)
        {
            text.Append($"  - step: {codes[step]}\n");
            foreach (var key in lines.Split("; ").GroupBy(l => l.Split(['/', ':'])[0]))
                text.Append(key.First().Split(':')[0].Contains('/', StringComparison.Ordinal)
                    ? $"    {key.Key}:\n" + string.Concat(key.Select(l => $"      {l[(key.Key.Length + 1)..]}\n"))
                    : $"    {key.First()}\n");
        }
        var findings = new FindingList();
        var signOff = SignOffReader.Read(RawFile.Of("records/flow.yaml", Encoding.UTF8.GetBytes(text.Append(foot).ToString())), findings);
        Assert.Empty(findings.InReadingOrder().Select(f => f.Found));
        return signOff!;
    }
}
