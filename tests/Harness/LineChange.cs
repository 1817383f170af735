using System.Text;

namespace Witnessmark.Harness;

/// <summary>A change that a mechanic can read: lines behind <c>--- PATH</c>, each run of <c>-</c> lines replaced by the <c>+</c> lines behind it.</summary>
public static class LineChange
{
    /// <param name="texts">By path; changed in place.</param>
    public static void Apply(string patch, IDictionary<string, string> texts)
    {
        var path = "";
        var (gone, come) = (new StringBuilder(), new StringBuilder());
        foreach (var line in patch.ReplaceLineEndings("\n").Split('\n').Append("--- "))
        {
            if (line.StartsWith("--- ", StringComparison.Ordinal) || (line.StartsWith('-') && come.Length > 0) || line.Length == 0)
            {
                if (gone.Length > 0)
                    texts[path] = Once(texts[path], gone.ToString(), come.ToString());
                gone.Clear();
                come.Clear();
            }
            if (line.StartsWith("--- ", StringComparison.Ordinal))
                path = line[4..];
            else if (line.StartsWith('-'))
                gone.Append(line[1..]).Append('\n');
            else if (line.StartsWith('+'))
                come.Append(line[1..]).Append('\n');
        }
    }

    private static string Once(string text, string from, string to)
    {
        var at = text.IndexOf(from, StringComparison.Ordinal);
        return at >= 0 ? text[..at] + to + text[(at + from.Length)..] : throw new ArgumentException($"nowhere stands\n{from}");
    }
}
