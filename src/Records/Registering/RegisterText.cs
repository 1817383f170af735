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

    private static readonly string[] Lists = ["released", "withdrawn", "copies", "ended"];

    /// <param name="title">Of the workshop.</param>
    public static string Begin(string title)
    {
        var text = new StringBuilder("# What was released and which copies are out. One line an entry; lines are added, never changed or taken away.\n");
        text.Append("# Two people may add at once: git keeps both (see .gitattributes).\n");
        return text.Append("register: ").Append(YamlScalar.Of(title)).Append('\n').ToString();
    }

    /// <summary>The text with one entry more at the end of its list.</summary>
    /// <param name="list">released, withdrawn, copies or ended.</param>
    /// <param name="entry">Keys and values in the order written; a null value is left out, a list is written in brackets.</param>
    public static string Add(string text, string list, params ReadOnlySpan<(string Key, object? Value)> entry)
    {
        if (!Lists.Contains(list))
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

    private static string Insert(string text, string list, string line)
    {
        var lines = text.TrimEnd('\n').Split('\n').ToList();
        var head = lines.FindIndex(l => l.TrimEnd() == $"{list}:");
        if (head < 0)
            return $"{string.Join('\n', lines)}\n\n{list}:\n{line}\n";
        var end = head + 1;
        while (end < lines.Count && (lines[end].StartsWith("  -", StringComparison.Ordinal) || lines[end].StartsWith("  #", StringComparison.Ordinal)))
            end++;
        lines.Insert(end, line);
        return string.Join('\n', lines) + "\n";
    }
}
