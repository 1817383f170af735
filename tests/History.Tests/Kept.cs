using System.CommandLine;
using System.Text;
using LibGit2Sharp;
using Witnessmark.Cli;
using Witnessmark.Harness;

namespace Witnessmark.History.Tests;

/// <summary>A workshop that git keeps, in a temp folder of its own; people, times and so all digits of its commits are fixed.</summary>
internal sealed class Kept : IDisposable
{
    private static readonly DateTimeOffset Morning = new(2031, 6, 11, 6, 40, 0, TimeSpan.FromHours(2));

    private readonly string _below;
    private int _minutes;

    /// <param name="below">The folder of the workshop in its repository; nothing when it is the whole.</param>
    /// <param name="from">The repository it is cloned from; null for a new one.</param>
    public Kept(string below = "", Kept? from = null)
    {
        _below = below;
        Root = new DirectoryInfo(Directory.CreateTempSubdirectory("witnessmark-history-").FullName).FullName;
        if (from is null)
            Repository.Init(Root);
        else
            Repository.Clone(from.Root, Root);
        Git = new Repository(Root);
        Git.Config.Set("core.autocrlf", false);
        Git.Config.Set("user.name", "RK");
        Git.Config.Set("user.email", "rk@cressel.invalid");
    }

    public string Root { get; }

    public string Folder => Path.Combine(Root, _below);

    public Repository Git { get; }

    private Signature Who => new("RK", "rk@cressel.invalid", Morning.AddMinutes(_minutes++));

    /// <summary>The demo's workshop as its first commit. Its register stays out: a test releases what it needs.</summary>
    public Kept WithDemo()
    {
        foreach (var file in Repo.Files(Repo.OneBrake).Where(f => f.Path != "register.yaml"))
            Write(file.Path, Encoding.UTF8.GetString(file.Bytes.Span));
        Commit("The workshop as it stands");
        return this;
    }

    public string Commit(string message)
    {
        Commands.Stage(Git, "*");
        return Git.Commit(message, Who, Who).Sha;
    }

    public MergeResult MergeWith(Kept other)
    {
        Commands.Fetch(Git, "other", ["+refs/heads/*:refs/remotes/other/*"], new FetchOptions(), null);
        return Git.Merge(Git.Branches[$"other/{other.Git.Head.FriendlyName}"], Who);
    }

    public Kept Knows(Kept other)
    {
        Git.Network.Remotes.Add("other", other.Root);
        return this;
    }

    public string Read(string file) => File.ReadAllText(Path.Combine(Folder, file));

    public void Write(string file, string text)
    {
        var path = Path.Combine(Folder, file);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
    }

    public void Move(string from, string to)
    {
        var path = Path.Combine(Folder, to);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.Move(Path.Combine(Folder, from), path);
    }

    public void Change(string file, string from, string to)
    {
        var text = Read(file);
        Assert.Contains(from, text, StringComparison.Ordinal);
        Write(file, text.Replace(from, to, StringComparison.Ordinal));
    }

    public (int Code, string Screen) Run(string line) => RunIn(Folder, line.Split(' '));

    public (int Code, string Screen) RunIn(string folder, params string[] words)
    {
        using var screen = new StringWriter { NewLine = "\n" };
        var code = CommandLine.Run(words, new Surroundings(screen, screen, () => Morning.AddMinutes(_minutes), folder, Coloured: false));
        return (code, screen.ToString().Replace(RootCommand.ExecutableName, "witnessmark", StringComparison.Ordinal));
    }

    public void Dispose()
    {
        Git.Dispose();
        // what git stores cannot be written to
        foreach (var file in Directory.EnumerateFiles(Root, "*", new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.ReparsePoint }))
            File.SetAttributes(file, FileAttributes.Normal);
        Directory.Delete(Root, recursive: true);
    }
}
