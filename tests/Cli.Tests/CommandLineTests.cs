using Witnessmark.Harness;

namespace Witnessmark.Cli.Tests;

public sealed class CommandLineTests
{
    [Fact]
    public void A_fault_of_ours_is_told_as_ours_and_ends_with_three()
    {
        using var screen = new StringWriter();
        var around = new Surroundings(screen, screen, () => throw new InvalidOperationException("the clock is gone"), Repo.Root, Coloured: false);
        Assert.Equal(3, CommandLine.Run(["issue", "WB-40", "--unit", "14", "--serial", "0417", "--place", "CL", "--by", "RK"], around));
        Assert.StartsWith("witnessmark itself has failed; nothing was written.", screen.ToString(), StringComparison.Ordinal);
        Assert.Contains("the clock is gone", screen.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(false, null, "xterm", true)]
    [InlineData(false, "", "xterm", true)]
    [InlineData(false, "1", "xterm", false)]
    [InlineData(true, null, "xterm", false)]
    [InlineData(false, null, "dumb", false)]
    public void Colour_is_for_terminals_that_want_it(bool redirected, string? noColour, string? terminal, bool coloured) =>
        Assert.Equal(coloured, Surroundings.WantsColour(redirected, noColour, terminal));

    [Theory]
    [InlineData(false, false)]
    [InlineData(true, false)]
    [InlineData(true, true)]
    public void How_far_printing_has_come_is_told_on_a_terminal_only_and_gone_when_it_is_done(bool watched, bool coloured)
    {
        var folder = Directory.CreateTempSubdirectory("witnessmark-print-");
        using var said = new StringWriter();
        using var told = new StringWriter();
        var around = new Surroundings(said, told, () => DateTimeOffset.UnixEpoch, folder.FullName, coloured) { Watched = watched };

        Assert.Equal(0, CommandLine.Run(["print", "WB-40", "--in", Repo.OneBrake], around));

        Assert.DoesNotContain('\r', said.ToString());
        Assert.Equal(watched, told.ToString().Contains("\rprinting ", StringComparison.Ordinal));
        Assert.Equal(coloured, told.ToString().Contains('\u001b', StringComparison.Ordinal));
        if (watched)
            Assert.Equal(["", ""], told.ToString().Split('\r')[^2..].Select(t => t.Trim()));
        folder.Delete(recursive: true);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Colour_changes_nothing_but_colour(bool coloured)
    {
        using var screen = new StringWriter();
        var around = new Surroundings(screen, screen, () => DateTimeOffset.UnixEpoch, Repo.Path("tests", "Rules.Tests"), coloured);
        CommandLine.Run(["check", Repo.Trial], around);
        var text = screen.ToString();
        Assert.Equal(coloured, text.Contains('\u001b', StringComparison.Ordinal));
        Assert.Contains("FOUND", text, StringComparison.Ordinal);
    }
}
