using System.Globalization;
using System.Text;
using Witnessmark.Harness;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Reading;

namespace Witnessmark.Proof.Tests;

/// <summary>After which steps people may leave the machine.</summary>
public sealed class SafeStopTests
{
    private static readonly Library Demo = Read("tests", "Workshops", "one-brake");
    private static readonly Library Trial = Read("tests", "Workshops", "trial");
    private static readonly Library Showcase = Read("procedures", "cressel-ridge");

    [Fact]
    public void The_demo_can_be_left_as_approved() => Approved.Check("Proof.Tests/wb-40.approved.txt", Told(Demo, "WB-40"));

    [Fact]
    public void The_trial_job_can_be_left_as_approved() => Approved.Check("Proof.Tests/job.approved.txt", Told(Trial, "centre-left-reline"));

    /// <summary>
    /// The scenario's own list (design/domain.md 7.6), planned by hand before there was a program: after wheel off (D), lines blanked (E),
    /// hub landed (G), piston out (J), ring torqued (N), cover closed (R), lines open and filled (S, T), wheel on (V).
    /// </summary>
    [Theory]
    [InlineData("Lay the wheel down")]
    [InlineData("Block the cooling lines")]
    [InlineData("Take the hub off")]
    [InlineData("Reseal the piston")]
    [InlineData("Prove the brake")]
    [InlineData("Tighten the cover bolts")]
    [InlineData("Fill both oils")]
    [InlineData("Fit the wheel, test, release")]
    public void No_rule_is_broken_where_the_scenario_plans_a_stop(string step) => Assert.Empty(After(step).Against);

    [Fact]
    public void The_showcase_can_be_left_as_approved() => Approved.Check("Proof.Tests/showcase.approved.txt", Told(Showcase, "centre-left-reline"));

    /// <summary>The same list, held against the job of the showcase: there every point is sure.</summary>
    [Theory]
    [InlineData("Put it on the stand, wheel off")]
    [InlineData("Block the cooling lines")]
    [InlineData("Take the hub off")]
    [InlineData("Reseal the piston")]
    [InlineData("Build the stack")]
    [InlineData("Close the wheel end")]
    [InlineData("Fill both oils")]
    [InlineData("Put the wheel on, lower it")]
    public void The_showcase_can_be_left_where_the_scenario_plans_it(string step) =>
        Assert.True(Points(Showcase, "centre-left-reline").Single(p => p.Place.Step.Name.Value == step).IsSafe);

    [Theory]
    [InlineData("Raise on the jack", "S35f")]
    [InlineData("Hook the wheel", "S35")]
    [InlineData("Take the nuts off", "S35")]
    public void A_jack_and_a_hung_load_are_no_place_to_stop(string step, string rule) =>
        Assert.Contains(rule, After(step).Against.Select(r => r.Id.Value));

    [Fact]
    public void What_nobody_says_is_not_known_and_not_safe()
    {
        var first = Points(Trial, "centre-left-reline").First();
        Assert.Empty(first.Against);
        Assert.NotEmpty(first.Unsure);
        Assert.False(first.IsSafe);
    }

    [Fact]
    public void A_machine_that_says_nothing_has_no_points()
    {
        var silent = Demo with { Machines = new Items<Machine>(Demo.Machines.Select(m => m with { Interlocks = Items<Interlock>.None })) };
        Assert.Empty(Points(silent, "WB-40"));
        Assert.False(SafeStops.AreKnownOf(silent.Machines.First()));
        Assert.NotEmpty(Points(Demo, "WB-40"));
    }

    private static StopPoint After(string step) => Points(Trial, "centre-left-reline").Single(p => p.Place.Step.Name.Value == step);

    private static IEnumerable<StopPoint> Points(Library library, string id)
    {
        var scope = library.ScopeOf(library.Procedure(id)!);
        return scope.Procedure.Parts.SelectMany(p => SafeStops.Of(scope, p));
    }

    private static Library Read(params string[] folder) => WorkshopReader.Read(Repo.Files(Repo.Path(folder)), new FindingList());

    private static string Told(Library library, string id)
    {
        var text = new StringBuilder();
        foreach (var point in Points(library, id))
            text.Append(CultureInfo.InvariantCulture, $"{point.Place.Step.Number,3} {point.Place.Step.Name}: ").AppendLine(Verdict(point));
        return text.ToString();
    }

    internal static string Verdict(StopPoint point) => point.IsSafe
        ? "safe"
        : string.Join("; ", new[] { Rules("not:", point.Against), Rules("not known:", point.Unsure) }.Where(t => t.Length > 0));

    private static string Rules(string title, IReadOnlyCollection<Interlock> rules) =>
        rules.Count == 0 ? "" : $"{title} {string.Join(", ", rules.Select(r => r.Id.Value))}";
}
