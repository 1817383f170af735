using System.CommandLine;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using LibGit2Sharp;
using Witnessmark.Harness;
using Witnessmark.Press;

namespace Witnessmark.Cli.Tests;

/// <summary>
/// A session as a person sees it: what goes on behind <c>%</c>, stage directions in brackets, commands behind <c>$ witnessmark</c>, then what is printed and
/// <c>exit n</c>. Run in a folder of its own, at a fixed time.
/// </summary>
internal sealed partial class Session : IDisposable
{
    private static readonly DateTimeOffset Morning = new(2031, 6, 11, 6, 40, 0, TimeSpan.FromHours(2));

    private DateTimeOffset _now = Morning;

    private BrowserFinder _browsers = BrowserFinder.OfThisMachine;

    private readonly string _folder = Directory.CreateTempSubdirectory("witnessmark-session-").FullName;

    public string Play(string script)
    {
        var played = new StringBuilder();
        foreach (var line in script.ReplaceLineEndings("\n").Split('\n').Where(IsScript))
        {
            played.Append(line).Append('\n');
            if (line.StartsWith("$ ", StringComparison.Ordinal))
                played.Append(Command(line[2..])).Append('\n');
            else if (line.StartsWith('('))
                Direct(line.Trim('(', ')'));
            if (!line.StartsWith("$ ", StringComparison.Ordinal))
                played.Append('\n');
        }
        return played.ToString();
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    /// <summary>Everything else in the file is what was printed when it was approved.</summary>
    private static bool IsScript(string line) => line.StartsWith("% ", StringComparison.Ordinal) || line.StartsWith("$ ", StringComparison.Ordinal) || line is ['(', .., ')'];

    /// <summary>One command, and what the screen shows.</summary>
    public (string Shown, int Code) Type(string line)
    {
        var words = Words().Matches(line).Select(m => m.Value[0] is '"' or '\'' ? m.Value[1..^1] : m.Value).ToArray();
        Assert.Equal("witnessmark", words[0]);
        using var screen = new StringWriter { NewLine = "\n" };
        var code = CommandLine.Run(words[1..], new Surroundings(screen, screen, () => _now, _folder, Coloured: false) { Browsers = _browsers });
        // the library names the program after the process, here the test runner
        var shown = screen.ToString().Replace(_folder, "/home/mo", StringComparison.Ordinal).Replace(RootCommand.ExecutableName, "witnessmark", StringComparison.Ordinal);
        // every rule that is added has a page
        return (PagesMade().Replace(shown, "… files in"), code);
    }

    public string Read(string file) => File.ReadAllText(Path.Combine(_folder, file));

    public bool Has(string file) => File.Exists(Path.Combine(_folder, file));

    private string Command(string line)
    {
        var words = line.Split(' ');
        if (words[0] == "show")
            return Read(words[1]);
        if (words[0] == "ls")
            return string.Join('\n', Directory.EnumerateFiles(Path.Combine(_folder, words[1]), "*", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(_folder, f)).Order(StringComparer.Ordinal)) + "\n";
        var (shown, code) = Type(line);
        return $"{shown}exit {code}\n";
    }

    private void Direct(string direction)
    {
        if (DemoIn().Match(direction) is { Success: true } demo)
            CopyDemo(demo.Groups[1].Value, withRegister: demo.Groups[2].Success);
        else if (direction == "no browser is installed")
            _browsers = new BrowserFinder(_ => null, _ => false, Environment.OSVersion);
        else if (direction == "git keeps all of it")
            Keep();
        else if (direction == "there is no git any more")
            Directory.Move(Path.Combine(_folder, ".git"), Path.Combine(_folder, "gone"));
        else if (NextMorning().Match(direction) is { Success: true } morning)
            _now = DateTimeOffset.Parse($"{morning.Groups[1].Value}T06:40:00+02:00", CultureInfo.InvariantCulture);
        else if (NamedBrowser().Match(direction) is { Success: true } named)
            _browsers = BrowserFinder.OfThisMachine with { Setting = name => name == BrowserFinder.Variable ? named.Groups[1].Value : null };
        else if (EmptyFolder().Match(direction) is { Success: true } empty)
            Directory.CreateDirectory(Path.Combine(_folder, empty.Groups[1].Value));
        else if (IsLink().Match(direction) is { Success: true } link)
            Directory.CreateSymbolicLink(Path.Combine(_folder, link.Groups[1].Value), link.Groups[2].Value);
        else if (FileHolds().Match(direction) is { Success: true } holds)
            Write(holds.Groups[1].Value, holds.Groups[2].Value.Replace("\\n", "\n", StringComparison.Ordinal));
        else if (Becomes().Match(direction) is { Success: true } change)
            Replace(change.Groups[1].Value, change.Groups[2].Value, change.Groups[3].Value.Replace("\\n", "\n", StringComparison.Ordinal));
        else if (FilledIn().Match(direction) is { Success: true } filled)
            FillIn(filled.Groups[1].Value, filled.Groups[2].Value);
        else
            Assert.Fail($"no such stage direction: {direction}");
    }

    /// <summary>What a session changes in the demo would be a released version that has changed, so most begin without a register.</summary>
    private void CopyDemo(string place, bool withRegister)
    {
        var folder = Path.Combine(_folder, place);
        Copy(Repo.OneBrake, folder);
        if (!withRegister)
            File.Delete(Path.Combine(folder, "register.yaml"));
    }

    private void Keep()
    {
        using var git = new Repository(Repository.Init(_folder));
        LibGit2Sharp.Commands.Stage(git, "procedures/*");
        var who = new Signature("MO", "mo@example.org", _now);
        git.Commit("Keep", who, who);
    }

    public void Write(string file, string text)
    {
        var path = Path.Combine(_folder, file);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
    }

    private void Replace(string file, string from, string to)
    {
        var path = Path.Combine(_folder, file);
        var text = File.ReadAllText(path);
        Assert.Contains(from, text, StringComparison.Ordinal);
        File.WriteAllText(path, text.Replace(from, to, StringComparison.Ordinal));
    }

    /// <summary>Types a case of Records.Tests into the blank that was issued here: hash, words and set mark stay those of the blank.</summary>
    private void FillIn(string folder, string name)
    {
        var blank = Directory.GetFiles(Path.Combine(_folder, folder), "*.yaml").Single();
        var text = File.ReadAllText(Repo.Path("tests", "Records.Tests", "Cases", name));
        foreach (var key in new[] { "hash", "copy", "issued" })
            text = Regex.Replace(text, $"(?m)^{key}: .*$", Line(key).TrimEnd('\n'));
        // a translated copy has one line more
        text = text.Replace("copy: ", $"{Line("words")}copy: ", StringComparison.Ordinal);
        File.WriteAllText(Path.Combine(_folder, "sign-off.yaml"), text);

        string Line(string key) => Regex.Match(File.ReadAllText(blank), $"(?m)^{key}: .*\n").Value;
    }

    private static void Copy(string from, string to)
    {
        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            var target = Path.Combine(to, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target, overwrite: true);
        }
    }

    [GeneratedRegex("\"[^\"]*\"|'[^']*'|\\S+")]
    private static partial Regex Words();

    [GeneratedRegex("^the demo workshop is in (\\S+?)(, with its register)?$")]
    private static partial Regex DemoIn();

    [GeneratedRegex("^there is an empty folder (\\S+)$")]
    private static partial Regex EmptyFolder();

    [GeneratedRegex(@"^it is the morning of (\d{4}-\d\d-\d\d)$")]
    private static partial Regex NextMorning();

    [GeneratedRegex("^WITNESSMARK_CHROMIUM is (\\S+)$")]
    private static partial Regex NamedBrowser();

    [GeneratedRegex("^(\\S+) is a link to (\\S+)$")]
    private static partial Regex IsLink();

    [GeneratedRegex("^the file (\\S+) holds: (.*)$")]
    private static partial Regex FileHolds();

    [GeneratedRegex("^in (\\S+), `(.*)` becomes `(.*)`$")]
    private static partial Regex Becomes();

    [GeneratedRegex("^the blank in (\\S+) is filled in as in (\\S+)$")]
    private static partial Regex FilledIn();

    [GeneratedRegex(@"[0-9]{3} files in")]
    private static partial Regex PagesMade();
}
