using LibGit2Sharp;

namespace Witnessmark.History.Tests;

/// <summary>Repositories as they lie about: part of a greater one, bare, none, with links and with others inside.</summary>
public sealed class RepositoryTests
{
    [Fact]
    public void A_workshop_in_a_folder_of_a_greater_repository_is_compared_alone()
    {
        using var kept = new Kept("field/crew 7").WithDemo();
        File.WriteAllText(Path.Combine(kept.Root, "wb-99.md"), "---\nprocedure: WB-99\n---\n");
        kept.Change("wheel-end/wb-40.md", "friction-disc = 9, steel", "friction-disc = 8, steel");
        kept.Commit("One disc less, and something else above");

        foreach (var folder in new[] { kept.Folder, Path.Combine(kept.Folder, "wheel-end") })
            Assert.EndsWith("1 procedure differs: 1 hazard.\n", kept.RunIn(folder, "compare", "HEAD~1", "HEAD").Screen, StringComparison.Ordinal);
        Assert.EndsWith("1 procedure differs: 1 hazard.\n", kept.RunIn(kept.Root, "compare", "HEAD~1", "HEAD", "--in", "field/crew 7").Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void A_workshop_that_git_does_not_keep_has_no_revisions()
    {
        using var kept = new Kept().WithDemo();
        using var plain = new Kept();
        Directory.Delete(Path.Combine(plain.Root, ".git"), recursive: true);
        plain.Write("workshop.yaml", kept.Read("workshop.yaml"));

        var (code, screen) = plain.Run("compare HEAD~1 HEAD");
        Assert.Equal(2, code);
        Assert.StartsWith("There is no file or folder HEAD~1, and no git here", screen, StringComparison.Ordinal);
    }

    [Fact]
    public void A_workshop_inside_a_bare_repository_has_no_revisions()
    {
        using var kept = new Kept().WithDemo();
        using var bare = new Kept();
        Repository.Init(Path.Combine(bare.Root, "kept.git"), isBare: true);
        bare.Write("kept.git/workshop.yaml", kept.Read("workshop.yaml"));

        Assert.Equal(2, bare.RunIn(Path.Combine(bare.Root, "kept.git"), "compare", "HEAD~1", "HEAD").Code);
    }

    [Fact]
    public void A_repository_without_a_commit_knows_no_revision()
    {
        using var kept = new Kept().WithDemo();
        using var begun = new Kept();
        begun.Write("workshop.yaml", kept.Read("workshop.yaml"));

        Assert.Equal(2, begun.Run("compare HEAD").Code);
    }

    [Fact]
    public void A_damaged_repository_is_said_to_know_nothing()
    {
        using var kept = new Kept().WithDemo();
        File.WriteAllText(Path.Combine(kept.Root, ".git", "HEAD"), "this is no reference\n");

        Assert.Equal(2, kept.Run("compare HEAD").Code);
    }

    [Fact]
    public void No_link_and_no_other_repository_in_the_tree_is_followed()
    {
        using var kept = new Kept().WithDemo();
        using var secret = new Kept();
        secret.Write("wb-98.md", kept.Read("common/wb-60.md").Replace("WB-60", "WB-98", StringComparison.Ordinal));
        File.CreateSymbolicLink(Path.Combine(kept.Root, "wb-98.md"), Path.Combine(secret.Root, "wb-98.md"));
        Directory.CreateSymbolicLink(Path.Combine(kept.Root, "linked"), secret.Root);
        WithSubmodule(kept);

        foreach (var made in new[] { "HEAD", "." })
            Assert.Equal((0, "No difference in meaning.\n"), kept.Run($"compare HEAD~1 {made}"));
    }

    [Fact]
    public void Names_that_a_terminal_would_obey_are_shown_and_not_obeyed()
    {
        using var kept = new Kept().WithDemo();
        var text = kept.Read("common/wb-60.md").Replace("WB-60", "WB-97", StringComparison.Ordinal);
        kept.Write("common/\u001b[2J$(reboot) 'x' ..\\ \u202e97.md", text.Replace("# Torque steps", "# Torque \u001b[31m steps", StringComparison.Ordinal));
        kept.Commit("A name from far away");
        kept.Git.ApplyTag("$(reboot)");

        var (code, screen) = kept.RunIn(kept.Folder, "compare", "HEAD~1", "$(reboot)");
        Assert.Equal(1, code);
        Assert.Contains("WB-97", screen, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001b', screen);
        Assert.DoesNotContain('\u202e', screen);
    }

    [Fact]
    public void Without_the_rest_of_its_files_a_revision_is_compared_as_far_as_it_can_be_read()
    {
        using var kept = new Kept().WithDemo();
        kept.Change("wheel-end/wb-40.md", "procedure: WB-40", "procedure: [");
        kept.Commit("Broken in haste");

        var (_, screen) = kept.Run("compare HEAD~1 HEAD");
        Assert.Contains("HEAD has 1 fault: what could not be read is not compared.", screen, StringComparison.Ordinal);
    }

    /// <summary>A commit whose tree names a commit of another repository, as a submodule does.</summary>
    private static void WithSubmodule(Kept kept)
    {
        Commands.Stage(kept.Git, "*");
        var tip = kept.Git.Head.Tip;
        var tree = TreeDefinition.From(kept.Git.Index.WriteToTree()).AddGitLink("other", new ObjectId("1234567890123456789012345678901234567890"));
        var who = new Signature("RK", "rk@cressel.invalid", DateTimeOffset.UnixEpoch);
        var made = kept.Git.ObjectDatabase.CreateCommit(who, who, "Links", kept.Git.ObjectDatabase.CreateTree(tree), [tip], prettifyMessage: false);
        kept.Git.Refs.UpdateTarget(kept.Git.Refs.Head.ResolveToDirectReference(), made.Id);
    }
}
