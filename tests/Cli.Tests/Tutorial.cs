using System.Text;
using System.Text.RegularExpressions;
using Witnessmark.Harness;

namespace Witnessmark.Cli.Tests;

/// <summary>
/// A page that leads through the program, done as a reader does it: files are written, lines that begin with <c>$</c> are typed, and what is then
/// seen takes the place of what the page shows.
/// </summary>
internal sealed partial class Tutorial(Session session)
{
    private readonly StringBuilder _done = new();
    private string _saidBefore = "";

    public string Follow(string page)
    {
        var rest = page.ReplaceLineEndings("\n");
        while (Fence().Match(rest) is { Success: true } fence)
        {
            Read(rest[..fence.Index]);
            rest = rest[(fence.Index + fence.Length)..];
            var (kind, block) = (fence.Groups[1].Value, fence.Groups[2].Value);
            var now = kind == "console" ? Type(block) : Put(kind, block);
            _done.Append($"```{kind}\n{now}```\n");
            // every copy has a mark of its own, and the page goes on with the one that was given here
            if (Mark().Match(now) is { Success: true } given)
                rest = Fence().IsMatch(rest) && OldMark().Match(rest) is { Success: true } old ? rest.Replace(old.Groups[1].Value, given.Groups[1].Value, StringComparison.Ordinal) : rest;
        }
        Read(rest);
        return _done.ToString();
    }

    private void Read(string prose)
    {
        _done.Append(prose);
        _saidBefore = prose.TrimEnd().Split("\n\n")[^1].ReplaceLineEndings(" ");
    }

    private string Type(string block)
    {
        var screen = new StringBuilder();
        foreach (var line in block.Split('\n').Where(l => l.StartsWith("$ ", StringComparison.Ordinal)))
        {
            var (shown, code) = session.Type(line[2..]);
            Assert.True(code <= 1, $"{line}\n{shown}");
            screen.Append(line).Append('\n').Append(shown);
        }
        return screen.ToString();
    }

    /// <summary>The file is the last one that was named before the block; the block is all of it, a change, or what stands in it from a key on.</summary>
    private string Put(string kind, string block)
    {
        var file = FileNamed().Matches(_saidBefore)[^1].Groups[1].Value;
        if (kind == "diff")
        {
            var texts = new Dictionary<string, string>(StringComparer.Ordinal) { [file] = session.Read(file) };
            LineChange.Apply($"--- {file}\n{block}", texts);
            session.Write(file, texts[file]);
        }
        else if (FromOn().Match(_saidBefore) is { Success: true } from)
        {
            var old = session.Read(file);
            session.Write(file, old[..(old.IndexOf($"\n{from.Groups[1].Value}", StringComparison.Ordinal) + 1)] + block);
        }
        else
            session.Write(file, block);
        return block;
    }

    [GeneratedRegex("(?m)^```(\\w+)\\n((?s:.*?))^```\\n")]
    private static partial Regex Fence();

    [GeneratedRegex(@"`([\w-]+(?:/[\w.-]+)+)`")]
    private static partial Regex FileNamed();

    [GeneratedRegex(@"From `(\w+:)` down")]
    private static partial Regex FromOn();

    [GeneratedRegex(@"(?m)^Copy (\w+) of ")]
    private static partial Regex Mark();

    [GeneratedRegex(@"Your mark is another than (\w+)\.")]
    private static partial Regex OldMark();
}
