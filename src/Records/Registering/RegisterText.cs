using System.Text;
using Witnessmark.Language.Text;

namespace Witnessmark.Records.Registering;

/// <summary>
/// Adds a line to the text of a register and changes nothing else in it. Every entry is one line, and new ones go to the end of their
/// list: where two clones have added, git's <c>merge=union</c> keeps the lines of both.
/// </summary>
public static class RegisterText
{
    /// <summary>What git has to be told, in <c>.gitattributes</c> beside the register.</summary>
    public const string GitAttribute = "register*.yaml merge=union";

    // git joins two conflicts with fewer than four lines between them into one and would write the head of a list twice: a blank, two lines
    // of comment and the head keep two lists apart
    private static readonly (string List, string About, string By)[] Lists =
    [
        ("released", "Versions, and the text that the number of each stands for from then on.", "witnessmark release adds a line."),
        ("withdrawn", "Versions that nobody may work from any more.", "witnessmark withdraw adds a line."),
        ("copies", "Copies on paper, each under its set mark.", "witnessmark issue adds a line."),
        ("ended", "Copies that are out no more: back, or spoiled.", "witnessmark returned and witnessmark spoiled add a line."),
    ];

    /// <param name="title">Of the workshop.</param>
    public static string Begin(string title)
    {
        var text = new StringBuilder("# What was released and which copies are out. One line an entry; lines are added, never changed or taken away.\n");
        text.Append("# Two people may add at once: git keeps both (see .gitattributes).\n");
        text.Append("register: ").Append(YamlScalar.Of(title)).Append('\n');
        foreach (var (list, _, _) in Lists)
            text.Append(Head(list));
        return text.ToString();
    }

    /// <summary>The text with one entry more at the end of its list.</summary>
    /// <param name="list">released, withdrawn, copies or ended.</param>
    /// <param name="entry">Keys and values in the order written; a null value is left out, a list is written in brackets.</param>
    public static string Add(string text, string list, params ReadOnlySpan<(string Key, object? Value)> entry)
    {
        if (!Lists.Any(l => l.List == list))
            throw new ArgumentException($"a register has no list {list}", nameof(list));
        var line = new StringBuilder("  - {");
        var first = true;
        foreach (var (key, value) in entry)
        {
            if (value is null)
                continue;
            line.Append(first ? "" : ", ").Append(key).Append(": ").Append(value is IEnumerable<string> many ? $"[{string.Join(", ", many.Select(YamlScalar.Of))}]" : YamlScalar.Of((string)value));
            first = false;
        }
        return Insert(text.ReplaceLineEndings("\n"), list, line.Append('}').ToString());
    }

    private static string Head(string list)
    {
        var (_, about, by) = Lists.First(l => l.List == list);
        return $"\n# {about}\n# {by}\n{list}:\n";
    }

    private static string Insert(string text, string list, string line)
    {
        var lines = text.TrimEnd('\n').Split('\n').ToList();
        var head = lines.FindIndex(l => l.TrimEnd() == $"{list}:");
        if (head < 0)
            return $"{string.Join('\n', lines)}\n{Head(list)}{line}\n";
        var end = head + 1;
        while (end < lines.Count && (lines[end].StartsWith("  -", StringComparison.Ordinal) || lines[end].StartsWith("  #", StringComparison.Ordinal)))
            end++;
        lines.Insert(end, line);
        return string.Join('\n', lines) + "\n";
    }
}
