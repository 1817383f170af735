using System.Globalization;
using System.Text;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;

namespace Witnessmark.Rendering.Messages;

/// <summary>
/// A finding for people: the sentence that stands alone first, then the marked line, why it matters, what to do.
/// </summary>
/// <param name="Folder">Put before every path, so that it can be opened from where the command was given.</param>
public sealed record FindingText(string Folder, Ink Ink)
{
    private const int Width = 100;
    private const int Indent = 16;
    private const int LongestLine = 160;

    /// <summary><c>machines/okr-34.yaml:103:13: fault: … (torque-unit-slip)</c></summary>
    public string Short(Finding finding) =>
        $"{Where(finding.At)}: {Colour(finding)}{finding.Severity.Word()}{Ink.Off}: {Visible.Text(finding.Found)} ({finding.Rule.Name})\n";

    public string Long(Finding finding)
    {
        var text = new StringBuilder();
        Labelled(text, "FOUND", finding.Found);
        text.Append(' ', Indent).Append(Colour(finding)).Append(finding.Severity.Word()).Append(Ink.Off)
            .Append(CultureInfo.InvariantCulture, $" {finding.Rule.Name}, {Where(finding.At)}\n\n");
        MarkedLine(text, finding.At, Colour(finding));
        foreach (var further in finding.Further)
        {
            text.Append(' ', Indent).Append(Ink.Quiet).Append(CultureInfo.InvariantCulture, $"{Where(further.At)}: {Visible.Text(further.Says)}").Append(Ink.Off).Append('\n');
            MarkedLine(text, further.At, Ink.Quiet);
        }
        foreach (var line in finding.Worked)
            Labelled(text, line == finding.Worked[0] ? "WORKED OUT" : "", line);
        Labelled(text, "WHY IT MATTERS", finding.Why);
        Labelled(text, "PUT RIGHT", finding.Correction is null ? finding.PutRight : $"{finding.PutRight} `check --put-right` does it.");
        return text.Append('\n').ToString();
    }

    private void MarkedLine(StringBuilder text, Location at, string colour)
    {
        if (at.Source.Content.Length == 0)
            return;
        var start = at.Start;
        var line = at.Source.Line(start.Line);
        var column = Math.Min(start.Column - 1, line.Length);
        var length = Math.Max(1, Math.Min(at.Span.Length, line.Length - column));
        // a very long line is cut to the neighbourhood of the mark
        var cut = column + length > LongestLine ? Math.Max(0, column - 20) : 0;
        var shown = line[cut..Math.Min(line.Length, cut + LongestLine)];
        length = Math.Min(length, Math.Max(1, shown.Length - (column - cut)));
        var number = start.Line.ToString(CultureInfo.InvariantCulture).PadLeft(Indent - 3);
        text.Append(Ink.Quiet).Append(number).Append(" | ").Append(Ink.Off).Append(Visible.Text(shown.Replace('\t', ' '))).Append('\n')
            .Append(Ink.Quiet).Append(' ', Indent - 3).Append(" | ").Append(Ink.Off).Append(' ', column - cut)
            .Append(colour).Append('^', length).Append(Ink.Off).Append("\n\n");
    }

    private void Labelled(StringBuilder text, string label, string words)
    {
        text.Append(Ink.Label).Append(label.PadRight(Indent)).Append(Ink.Off);
        var used = Indent;
        foreach (var word in Visible.Text(words).Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (used > Indent && used + 1 + word.Length > Width)
            {
                text.Append('\n').Append(' ', Indent);
                used = Indent;
            }
            if (used > Indent)
            {
                text.Append(' ');
                used++;
            }
            text.Append(word);
            used += word.Length;
        }
        text.Append('\n');
    }

    private string Where(Location at)
    {
        var start = at.Start;
        var path = Folder.Length == 0 ? at.Source.Path : $"{Folder.TrimEnd('/')}/{at.Source.Path}";
        return string.Create(CultureInfo.InvariantCulture, $"{Visible.Text(path)}:{start.Line}:{start.Column}");
    }

    private string Colour(Finding finding) => finding.Severity switch
    {
        Severity.Fault => Ink.Fault,
        Severity.Query => Ink.Query,
        _ => Ink.Remark,
    };
}
