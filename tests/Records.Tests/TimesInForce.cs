using Witnessmark.Language.Model;

namespace Witnessmark.Records.Tests;

/// <summary>Which version was in force when, from registers as they are written.</summary>
public sealed class TimesInForce
{
    [Fact]
    public void A_version_holds_from_its_release_until_the_next() =>
        Assert.Equal("2031-05-02 2.0.0, 2031-07-01 2.1.0", Of(Released("2.0.0", "2031-05-02"), Released("2.1.0", "2031-07-01")));

    [Fact]
    public void The_order_of_the_lines_does_not_count_but_on_one_day_the_later_line_holds()
    {
        Assert.Equal("2031-05-02 2.0.0, 2031-07-01 2.1.0", Of(Released("2.1.0", "2031-07-01"), Released("2.0.0", "2031-05-02")));
        Assert.Equal("2031-05-02 2.1.0", Of(Released("2.0.0", "2031-05-02"), Released("2.1.0", "2031-05-02")));
    }

    [Fact]
    public void When_a_version_is_withdrawn_the_one_before_holds_again() =>
        Assert.Equal(
            "2031-05-02 2.0.0, 2031-07-01 2.1.0, 2031-07-09 2.0.0",
            Of(Released("2.0.0", "2031-05-02"), Released("2.1.0", "2031-07-01"), Withdrawn("2.1.0", "2031-07-09")));

    [Fact]
    public void When_the_only_one_is_withdrawn_none_holds_until_the_next() =>
        Assert.Equal(
            "2031-05-02 2.0.0, 2031-06-01 none, 2031-07-01 2.1.0",
            Of(Released("2.0.0", "2031-05-02"), Withdrawn("2.0.0", "2031-06-01"), Released("2.1.0", "2031-07-01")));

    [Fact]
    public void What_was_replaced_already_ends_nothing_when_it_is_withdrawn() =>
        Assert.Equal("2031-05-02 2.0.0, 2031-07-01 2.1.0", Of(Released("2.0.0", "2031-05-02"), Released("2.1.0", "2031-07-01"), Withdrawn("2.0.0", "2031-08-01")));

    [Fact]
    public void A_procedure_that_nobody_released_has_none() => Assert.Empty(Of());

    private static string Released(string version, string date) => $"  - {{procedure: WB-40, version: {version}, hash: \"{version}\", date: \"{date}\", by: RK}}";

    private static string Withdrawn(string version, string date) => $"  - {{procedure: WB-40, version: {version}, date: \"{date}\", by: RK}}";

    private static string Of(params string[] lines)
    {
        var register = Demo.Register(
            $"register: crew\nreleased:\n{string.Join('\n', lines.Where(l => l.Contains("hash", StringComparison.Ordinal)).Append("  - {procedure: WB-41, version: 9.0.0, hash: \"9\", date: \"2031-01-01\", by: RK}"))}\n"
            + (lines.Any(l => !l.Contains("hash", StringComparison.Ordinal)) ? $"withdrawn:\n{string.Join('\n', lines.Where(l => !l.Contains("hash", StringComparison.Ordinal)))}\n" : ""),
            Demo.Library);
        var times = TimeInForce.Of(register, "WB-40");
        // without gaps: each begins where the one before ends, and only the last has no end
        Assert.Equal(times.Select(t => t.Until), times.Skip(1).Select(t => (string?)t.From).Append(null).Take(times.Length));
        return string.Join(", ", times.Select(t => $"{t.From} {t.Version?.Version.Value ?? "none"}"));
    }
}
