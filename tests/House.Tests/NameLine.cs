namespace Witnessmark.House.Tests;

/// <summary>
/// A line of <c>rule-names.txt</c>: <c>stack-two-alike  Stack  since 0.1.0</c>, and <c>  gone in 0.4.0</c> behind it when the
/// rule was taken out. A line is never removed.
/// </summary>
internal sealed record NameLine(string Name, string Topic, string Since, string? GoneIn)
{
    public static IReadOnlyList<NameLine> ReadAll() =>
    [
        .. House.Read("tests/House.Tests/rule-names.txt").Split('\n').Where(l => l.Length > 0 && !l.StartsWith('#')).Select(Parse),
    ];

    private static NameLine Parse(string line)
    {
        var cells = line.Split("  ", StringSplitOptions.RemoveEmptyEntries);
        return cells is [var name, var topic, var since, ..] && since.StartsWith("since ", StringComparison.Ordinal)
            ? new NameLine(name, topic, since[6..], cells.Length > 3 ? cells[3]["gone in ".Length..] : null)
            : throw new FormatException($"not a line of the list of names: {line}");
    }
}
