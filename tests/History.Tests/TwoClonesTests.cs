using LibGit2Sharp;

namespace Witnessmark.History.Tests;

/// <summary>Two people write to the register at once, each in a clone; then the two are merged.</summary>
public sealed class TwoClonesTests : IDisposable
{
    private readonly Kept _first = new Kept().WithDemo();
    private Kept? _second;

    public void Dispose()
    {
        _second?.Dispose();
        _first.Dispose();
    }

    [Fact]
    public void The_first_copies_of_two_people_are_both_in_the_register()
    {
        Released();
        var second = Cloned();
        _first.Run("issue WB-40 --unit 14 --serial 0417 --place CL --by RK");
        second.Run("issue WB-40 --unit 15 --serial 0418 --place CR --by MO");
        Merged(second);

        Assert.Equal(2, Marks().Distinct(StringComparer.Ordinal).Count());
        Sound();
        Assert.EndsWith("2 copies out.\n", _first.Run("copies").Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void Twenty_copies_from_each_clone_have_forty_marks()
    {
        Released();
        var second = Cloned();
        for (var i = 0; i < 20; i++)
        {
            // the same copy in both clones, at the same minute
            _first.Run($"issue WB-40 --unit {i} --serial 0417 --place CL --by RK");
            second.Run($"issue WB-40 --unit {i} --serial 0417 --place CL --by MO");
        }
        Merged(second);

        Assert.Equal(40, Marks().Distinct(StringComparer.Ordinal).Count());
        Sound();
    }

    [Fact]
    public void One_has_a_copy_back_while_the_other_issues()
    {
        Released();
        _first.Run("issue WB-40 --unit 14 --serial 0417 --place CL --by RK");
        _first.Commit("One copy out");
        var second = Cloned();
        _first.Run($"returned {Marks().Single()} --by RK");
        second.Run("issue WB-40 --unit 15 --serial 0418 --place CR --by MO");
        Merged(second);

        Sound();
        Assert.EndsWith("1 copy out.\n", _first.Run("copies").Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void Both_begin_a_register_and_go_through_a_whole_day()
    {
        var second = Cloned();
        foreach (var (clone, by, unit) in new[] { (_first, "RK", "14"), (second, "MO", "15") })
        {
            clone.Run($"release WB-60 --by {by}");
            clone.Run($"release WB-40 --by {by}");
            clone.Run($"issue WB-40 --unit {unit} --serial 0417 --place CL --by {by}");
        }
        _first.Run($"spoiled {Marks().Single()} --by RK --why oil");
        Merged(second);

        Sound();
        Assert.EndsWith("1 copy out.\n", _first.Run("copies").Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void One_version_released_with_two_texts_is_found_after_the_merge()
    {
        var second = Cloned();
        second.Change("common/wb-60.md", "Wind the wrench back** to its lowest mark", "Wind the wrench back** to its zero mark");
        foreach (var clone in new[] { _first, second })
            Assert.Equal(0, clone.Run("release WB-60 --by RK").Code);
        Merged(second);

        var (code, screen) = _first.Run("check --report short");
        Assert.Equal(1, code);
        Assert.Contains("(released-twice)", screen, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_word_to_git_a_merge_stays_open_and_is_told_in_plain_words()
    {
        Released();
        File.Delete(Path.Combine(_first.Folder, ".gitattributes"));
        _first.Commit("Tidy up too much");
        var second = Cloned();
        _first.Run("issue WB-40 --unit 14 --serial 0417 --place CL --by RK");
        second.Run("issue WB-40 --unit 15 --serial 0418 --place CR --by MO");
        _first.Commit("What RK did");
        second.Commit("What MO did");
        Assert.Equal(MergeStatus.Conflicts, _first.Knows(second).MergeWith(second).Status);

        var (code, screen) = _first.Run("check");
        Assert.Equal(1, code);
        Assert.Contains("merge that git could not finish", screen, StringComparison.Ordinal);
        Assert.Contains("take out the lines of git", screen.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.DoesNotContain("yaml-", screen, StringComparison.Ordinal);
    }

    private void Released()
    {
        Assert.Equal(0, _first.Run("release WB-60 --by RK").Code);
        Assert.Equal(0, _first.Run("release WB-40 --by RK").Code);
        _first.Commit("Release both");
    }

    private Kept Cloned() => _second = new Kept(from: _first);

    private void Merged(Kept second)
    {
        _first.Commit("What RK did");
        second.Commit("What MO did");
        Assert.Equal(MergeStatus.NonFastForward, _first.Knows(second).MergeWith(second).Status);
    }

    private void Sound()
    {
        var (code, screen) = _first.Run("check --report short");
        Assert.True(code == 0, screen + _first.Read("register.yaml"));
    }

    private List<string> Marks() => [.. _first.Read("register.yaml").Split('\n').Where(l => l.Contains("issued:", StringComparison.Ordinal)).Select(l => l.Split("copy: ")[1].Split(',')[0])];
}
