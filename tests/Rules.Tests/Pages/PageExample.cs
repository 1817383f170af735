using System.Collections.Immutable;
using Witnessmark.Rules.Tests.Workshops;

namespace Witnessmark.Rules.Tests.Pages;

/// <summary>
/// One block of a page: <c>```diff procedures/wheel-end/wb-40.md</c>. Lines with a minus stand in the demo and are taken
/// out, lines with a plus come in their place, lines with two blanks stand in the demo, each by itself, and stay. With
/// <c>allow other</c> behind the path the right example may have findings of other rules.
/// </summary>
/// <param name="Line">Of the page, for messages.</param>
internal sealed record PageExample(string Page, int Line, string File, bool AllowsOther, ImmutableArray<PageChange> Changes)
{
    private const string Folder = "procedures/";

    public static PageExample Parse(string page, int line, string info, string[] lines)
    {
        var words = info.Split(' ', 3, StringSplitOptions.RemoveEmptyEntries);
        if (words is not ["diff", var file, ..] || !file.StartsWith(Folder, StringComparison.Ordinal))
            throw new PageException(page, line, "opens its blocks with ```diff procedures/file");
        if (words.Length == 3 && words[2] != "allow other")
            throw new PageException(page, line, $"knows `allow other` behind the file, not `{words[2]}`");
        return new PageExample(page, line, file[Folder.Length..], words.Length == 3, PageChange.Parse(page, line, lines));
    }

    public DemoWorkshop Apply(DemoWorkshop workshop)
    {
        if (!workshop.Files.TryGetValue(File, out var text))
            return Changes is [{ Out.IsEmpty: true }]
                ? workshop.With(File, Joined(Changes[0].In))
                : throw new PageException(Page, Line, $"names a file of the demo; {File} is none");
        foreach (var change in Changes)
            text = Apply(change, text);
        return workshop.With(File, text);
    }

    private string Apply(PageChange change, string text)
    {
        var (lookFor, putIn) = (Joined(change.Out), Joined(change.In));
        if (lookFor.Length == 0)
            throw new PageException(Page, change.Line, $"has a line with - before the lines with +, to say where they go: + {change.In[0]}");
        var lines = "\n" + text;
        var at = lines.IndexOf("\n" + lookFor, StringComparison.Ordinal);
        if (at < 0)
            throw new PageException(Page, change.Line, $"quotes whole lines of {File}; this is not there:\n{lookFor}");
        if (lines.IndexOf("\n" + lookFor, at + 1, StringComparison.Ordinal) >= 0 && !change.Stays)
            throw new PageException(Page, change.Line, $"quotes enough to be found once in {File}; this is there more than once:\n{lookFor}");
        return text[..at] + putIn + text[(at + lookFor.Length)..];
    }

    private static string Joined(ImmutableArray<string> lines) => string.Concat(lines.Select(l => l + "\n"));
}

/// <param name="Line">Of the page, for messages.</param>
internal sealed record PageChange(int Line, ImmutableArray<string> Out, ImmutableArray<string> In)
{
    public bool Stays => Out.SequenceEqual(In);

    public static ImmutableArray<PageChange> Parse(string page, int line, string[] lines)
    {
        var changes = ImmutableArray.CreateBuilder<PageChange>();
        var i = 0;
        while (i < lines.Length)
        {
            var start = i;
            foreach (var kept in Take(lines, ref i, ' ').Where(k => k.Length > 0))
                changes.Add(new PageChange(line + start + 1, [kept], [kept]));
            if (i > start)
                continue;
            var taken = Take(lines, ref i, '-');
            changes.Add(new PageChange(line + start + 1, taken, Take(lines, ref i, '+')));
            if (i == start)
                throw new PageException(page, line + i + 1, "begins each line of an example with -, + or two blanks");
        }
        return changes.ToImmutable();
    }

    /// <summary>Lines that begin with the sign and a blank; a sign alone is an empty line.</summary>
    private static ImmutableArray<string> Take(string[] lines, ref int i, char sign)
    {
        var taken = ImmutableArray.CreateBuilder<string>();
        for (; i < lines.Length && Content(lines[i], sign) is { } content; i++)
            taken.Add(content);
        return taken.ToImmutable();
    }

    private static string? Content(string line, char sign)
    {
        if (sign == ' ' && line.Trim().Length == 0)
            return "";
        if (line.Length == 1 && line[0] == sign)
            return "";
        return line.Length > 1 && line[0] == sign && line[1] == ' ' ? line[2..] : null;
    }
}
