using Witnessmark.Checking;
using Witnessmark.Reading.Faults;
using Witnessmark.Records.Receiving;

namespace Witnessmark.Rules.Tests.FailureModes;

/// <summary>What can go wrong and what looks for it: the page names nothing that is not there, and leaves nothing out.</summary>
public sealed class FailureModeTests
{
    private static readonly HashSet<string> OnCheck =
        [.. RuleSet.All.Select(r => r.Info).Concat(DataFaults.All).Concat(StepFaults.All).Concat(TranslationFaults.All).Select(r => r.Name)];

    private static readonly HashSet<string> OnReceiving = [.. ReasonSet.All.Select(r => r.Info.Name)];

    private static IEnumerable<FailureMode> On(string when) => FailureMode.All.Where(m => m.When.Contains(when));

    [Fact]
    public void There_are_85_each_under_its_number() =>
        Assert.Equal(Enumerable.Range(1, 85).Select(n => $"F{n:00}"), FailureMode.All.Select(m => m.Id));

    [Fact]
    public void Every_rule_that_is_named_is_there() =>
        Assert.Empty(FailureMode.All.SelectMany(m => m.Rules.Where(r => !OnCheck.Contains(r) && !OnReceiving.Contains(r)).Select(r => $"{m}: {r}")));

    [Fact]
    public void What_the_files_can_show_has_a_rule_or_waits_for_the_proof() =>
        Assert.Empty(On("A").Where(m => !m.Rules.Any(OnCheck.Contains) && !m.FoundBy.Contains(FailureMode.Proof, StringComparison.Ordinal)));

    [Fact]
    public void What_a_sign_off_can_show_has_a_reason_or_says_what_is_to_come() =>
        Assert.Empty(On("S").Where(m => !m.Rules.Any(OnReceiving.Contains) && !m.FoundBy.Contains("sign-off (issue 8)", StringComparison.Ordinal)));

    [Fact]
    public void What_the_paper_shows_says_where() =>
        Assert.Empty(On("P").Where(m => !m.FoundBy.Contains("printed cue: ", StringComparison.Ordinal)));

    [Fact]
    public void Each_is_found_when_something_is_checked_comes_back_or_is_printed() =>
        Assert.Empty(FailureMode.All.Where(m => m.When.Any(w => w is not ("A" or "S" or "P")) || m.When.Distinct().Count() != m.When.Length));

    [Fact]
    public void The_measure_sees_a_rule_that_is_not_there() =>
        Assert.Equal(["no-such-rule"], FailureMode.Parse("| F01 | Blank left in | A | `no-such-rule` |").Single().Rules.Where(r => !OnCheck.Contains(r)));
}
