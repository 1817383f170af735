using System.Text;

namespace Witnessmark.Harness;

/// <summary>Published check values: rows by column name. Quotes after RFC 4180.</summary>
public static class Csv
{
    public static IReadOnlyList<IReadOnlyDictionary<string, string>> Reference(string name)
    {
        var lines = Records(Repo.Read("tests", "Reference", name)).ToList();
        return [.. lines.Skip(1).Select(cells => lines[0].Zip(cells).ToDictionary(p => p.First, p => p.Second, StringComparer.Ordinal))];
    }

    private static IEnumerable<List<string>> Records(string text)
    {
        var cells = new List<string>();
        var cell = new StringBuilder();
        var quoted = false;
        for (var i = 0; i < text.Length; i++)
        {
            var c = text[i];
            if (quoted && c == '"' && i + 1 < text.Length && text[i + 1] == '"')
            {
                cell.Append('"');
                i++;
            }
            else if (c == '"')
                quoted = !quoted;
            else if (!quoted && c == ',')
                Take();
            else if (!quoted && c == '\n')
            {
                Take();
                if (cells.Any(x => x.Length > 0))
                    yield return cells;
                cells = [];
            }
            else if (c != '\r' || quoted)
                cell.Append(c);
        }
        Take();
        if (cells.Any(x => x.Length > 0))
            yield return cells;

        void Take()
        {
            cells.Add(cell.ToString());
            cell.Clear();
        }
    }
}
