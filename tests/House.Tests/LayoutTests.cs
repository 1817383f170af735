using Witnessmark.Harness;

namespace Witnessmark.House.Tests;

public sealed class LayoutTests
{
    private static readonly string[] Top =
        ["README.md", "DEVELOPERS.md", "LICENSE", "global.json", "src", "tests", "procedures", "templates", "site"];

    /// <summary>Put together here, so that this file does not say them.</summary>
    private static readonly string[] Unsaid = ["tran" + "script", "seed " + "document"];

    private static readonly string[] PathsOfAMachine = ["/" + "root/", "/" + "work/", "C:" + "\\Users"];

    private static readonly string[] Binary = [".png", ".woff2", ".ico", ".pdf", ".jpg"];

    [Fact]
    public void At_the_top_stands_only_what_belongs_there()
    {
        var there = Directory.EnumerateFileSystemEntries(Repo.Root).Select(Path.GetFileName).Where(n => !n!.StartsWith('.') && n != "out");

        Assert.Empty(there.Except(Top));
        Assert.Empty(Top.Except(there));
    }

    [Fact]
    public void Every_folder_at_the_top_is_explained_on_the_front_page_or_the_one_behind_it()
    {
        var pages = House.Read("README.md") + House.Read("DEVELOPERS.md");

        Assert.All(Top.Where(t => Directory.Exists(Repo.Path(t))), folder => Assert.Contains(folder, pages, StringComparison.Ordinal));
    }

    [Fact]
    public void Nothing_is_said_of_where_the_task_came_from_or_of_a_machine_it_was_made_on()
    {
        var said = House.Files()
            .Where(f => !Binary.Contains(Path.GetExtension(f)) && f != ".git")
            .SelectMany(f => Unsaid.Where(w => House.Read(f).Contains(w, StringComparison.OrdinalIgnoreCase))
                .Concat(PathsOfAMachine.Where(p => House.Read(f).Contains(p, StringComparison.Ordinal)))
                .Select(w => $"{f}: {w}"));

        Assert.Empty(said);
    }

    [Fact]
    public void No_two_versions_of_a_text_stand_side_by_side() =>
        Assert.Empty(House.Files()
            .Where(f => !Binary.Contains(Path.GetExtension(f)))
            .Where(f => House.Read(f).Split('\n').Any(l => l.StartsWith(new string('<', 7), StringComparison.Ordinal))));

    [Fact]
    public void Every_text_ends_its_lines_the_same_way() =>
        Assert.Empty(House.Files("src", ".cs").Concat(House.Files("procedures")).Where(f => House.Read(f).Contains('\r')));
}
