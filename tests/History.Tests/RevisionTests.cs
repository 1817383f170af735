using LibGit2Sharp;

namespace Witnessmark.History.Tests;

public sealed class RevisionTests : IDisposable
{
    private readonly Kept _workshop = new Kept().WithDemo();

    public void Dispose() => _workshop.Dispose();

    [Theory]
    [InlineData("HEAD~1")]
    [InlineData("a-tag")]
    [InlineData("a-note")]
    [InlineData("a-branch")]
    [InlineData("DIGITS")]
    [InlineData("SHORT")]
    public void A_revision_is_named_by_tag_branch_or_digits(string name)
    {
        var before = _workshop.Git.Head.Tip.Sha;
        _workshop.Git.ApplyTag("a-tag", before);
        _workshop.Git.Tags.Add("a-note", _workshop.Git.Head.Tip, new Signature("RK", "rk@cressel.invalid", DateTimeOffset.UnixEpoch), "a tag with words");
        _workshop.Git.Branches.Add("a-branch", before);
        OneDiscLess();

        Assert.Contains("friction-disc", _workshop.Run($"compare {name.Replace("DIGITS", before, StringComparison.Ordinal).Replace("SHORT", before[..8], StringComparison.Ordinal)} HEAD").Screen, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("torque-upp", "Did you mean torque-up?")]
    [InlineData("0123456789abcdef", "git log shows the revisions")]
    [InlineData("HEAD~99", "git log shows the revisions")]
    [InlineData("HEAD:workshop.yaml", "git log shows the revisions")]
    [InlineData("HEAD^{tree}", "git log shows the revisions")]
    [InlineData("..HEAD", "Did you mean HEAD?")]
    [InlineData("HAED", "Did you mean HEAD?")]
    public void A_revision_that_git_does_not_know_is_refused_in_words(string name, string todo)
    {
        _workshop.Git.Branches.Add("torque-up", _workshop.Git.Head.Tip);
        var (code, screen) = _workshop.Run($"compare {name} HEAD");

        Assert.Equal(2, code);
        Assert.StartsWith($"{name} is no file, no folder and no revision that git knows here.", screen, StringComparison.Ordinal);
        Assert.Contains(todo, screen, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_moved_is_the_same_procedure()
    {
        _workshop.Move("wheel-end/wb-40.md", "brakes/build/wb-40.md");
        _workshop.Commit("Sort by system");

        Assert.Equal((0, "No difference in meaning.\n"), _workshop.Run("compare HEAD~1 HEAD"));
    }

    [Fact]
    public void A_file_that_moved_and_changed_shows_what_changed()
    {
        _workshop.Move("wheel-end/wb-40.md", "brakes/wb-40.md");
        _workshop.Change("brakes/wb-40.md", "friction-disc = 9, steel", "friction-disc = 8, steel");
        _workshop.Commit("Sort by system");

        var screen = _workshop.Run("compare HEAD~1 HEAD").Screen;
        Assert.Contains("step 6 Count each pile: count", screen, StringComparison.Ordinal);
        Assert.EndsWith("1 procedure differs: 1 hazard.\n", screen, StringComparison.Ordinal);
    }

    [Fact]
    public void A_procedure_that_came_and_one_that_went_are_told()
    {
        _workshop.Write("common/wb-61.md", _workshop.Read("common/wb-60.md").Replace("WB-60", "WB-61", StringComparison.Ordinal));
        _workshop.Commit("A second way to torque");
        _workshop.Move("common/wb-61.md", "old.txt");
        _workshop.Commit("Not needed after all");

        Assert.Contains("WB-61", Told("HEAD~2", "HEAD~1"), StringComparison.Ordinal);
        Assert.Contains("WB-61", Told("HEAD~1", "HEAD"), StringComparison.Ordinal);
        Assert.NotEqual(Told("HEAD~2", "HEAD~1"), Told("HEAD~1", "HEAD"));
        Assert.Equal("No difference in meaning.\n", Told("HEAD~2", "HEAD"));
    }

    [Fact]
    public void The_same_text_with_the_line_ends_of_another_system_does_not_differ()
    {
        foreach (var file in new[] { "wheel-end/wb-40.md", "common/wb-60.md", "machines/okr-34.yaml" })
            _workshop.Write(file, _workshop.Read(file).Replace("\n", "\r\n", StringComparison.Ordinal));

        Assert.Equal((0, "No difference in meaning.\n"), _workshop.Run("compare HEAD"));
    }

    [Fact]
    public void What_is_not_committed_yet_is_compared_as_it_lies_there()
    {
        _workshop.Change("wheel-end/wb-40.md", "friction-disc = 9, steel", "friction-disc = 8, steel");

        Assert.Contains("step 6 Count each pile: count", Told("HEAD", "."), StringComparison.Ordinal);
        Assert.Contains("step 6 Count each pile: count", _workshop.Run("compare HEAD").Screen, StringComparison.Ordinal);
    }

    private string Told(string old, string made) => _workshop.Run($"compare {old} {made}").Screen;

    private void OneDiscLess()
    {
        _workshop.Change("wheel-end/wb-40.md", "friction-disc = 9, steel", "friction-disc = 8, steel");
        _workshop.Commit("One disc less");
    }
}
