using System.Text.Json;
using Witnessmark.Harness;

namespace Witnessmark.History.Tests;

public sealed class PairTests(FiveVersions versions) : IClassFixture<FiveVersions>
{
    public static TheoryData<int, int> Pairs =>
        [.. from old in Enumerable.Range(1, FiveVersions.Count) from made in Enumerable.Range(old + 1, FiveVersions.Count - old) select (old, made)];

    [Theory]
    [MemberData(nameof(Pairs))]
    public void Any_two_of_five_versions_are_told_as_approved(int old, int made)
    {
        var (code, screen) = versions.Workshop.Run($"compare v{old} v{made}");

        Approved.Check($"History.Tests/Approved/v{old}-v{made}.txt", screen);
        Assert.Equal(1, code);
    }

    [Theory]
    [InlineData("json", "json")]
    [InlineData("markdown", "md")]
    [InlineData("html", "html")]
    public void One_pair_is_told_as_approved_in_every_form(string report, string extension) =>
        Approved.Check($"History.Tests/Approved/v2-v5.{extension}", versions.Workshop.Run($"compare v2 v5 --report {report}").Screen);

    [Fact]
    public void What_is_told_as_json_is_json() =>
        Assert.Equal(JsonValueKind.Object, JsonDocument.Parse(versions.Workshop.Run("compare v1 v5 --report json").Screen).RootElement.ValueKind);

    [Theory]
    [InlineData("v3", "v3")]
    [InlineData("v5", "HEAD")]
    [InlineData("v5", ".")]
    public void A_version_does_not_differ_from_itself(string old, string made) =>
        Assert.Equal((0, "No difference in meaning.\n"), versions.Workshop.Run($"compare {old} {made}"));

    [Fact]
    public void Small_drifts_are_seen_against_the_version_in_force()
    {
        var (_, step) = versions.Workshop.Run("compare v4 v5 --only WB-40");

        // the torque of v3 and the count of v4 are no part of the last step, but of all since the release
        Assert.Contains("is  245 ± 12 N·m", step[step.IndexOf("beside 2.1.0", StringComparison.Ordinal)..], StringComparison.Ordinal);
        Assert.Contains("step 6 Count each pile: count friction-disc", step[step.IndexOf("beside 2.1.0", StringComparison.Ordinal)..], StringComparison.Ordinal);
    }
}
