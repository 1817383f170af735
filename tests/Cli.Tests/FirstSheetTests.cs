using Witnessmark.Harness;

namespace Witnessmark.Cli.Tests;

/// <summary>The page for those who begin is done as it stands there. WITNESSMARK_APPROVE=1 writes what is seen into it.</summary>
public sealed class FirstSheetTests
{
    private const string Page = "site/pages/first-sheet.md";

    private static readonly Lazy<string> Done = new(() =>
    {
        using var session = new Session();
        var seen = new Tutorial(session).Follow(Repo.Read(Page.Split('/')));
        Assert.True(session.Has("out/sheets/wb-01-a4.html"), "the sheet is not where the page says");
        return seen;
    });

    [Fact]
    public void Who_does_what_the_page_says_sees_what_the_page_shows() => Approved.Check($"../{Page}", Done.Value);

    [Fact]
    public void The_planned_slip_is_found_put_right_and_the_record_stands()
    {
        string[] milestones =
        [
            "fault torque-unit-slip", "Did you mean `300 ± 15 N·m`?", "No finding.", "Open out/index.html.", "Released WB-01 1.0.0", "COMPLETE. 3 of 3 entries given.", "5 counted", "REFUSED for 1 reason.",
        ];
        var at = milestones.Select(m => Done.Value.IndexOf(m, StringComparison.Ordinal)).ToArray();

        Assert.DoesNotContain(-1, at);
        Assert.Equal(at.Order(), at);
    }
}
