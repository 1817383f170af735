using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>More readings than boxes: two rows run together, or a piece that the machine does not have.</summary>
public sealed class ReadingsTooMany : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Fault("readings-too-many");

    public static void Check(Held held, FindingList findings)
    {
        foreach (var answer in held.Answers<ReadingAsk>())
        {
            foreach (var row in answer.Rows().Where(r => r.Numbers.Length > answer.Ask.Points))
                Add(findings, row.At, $"{answer.Name(row)} has {Say.Count(row.Numbers.Length, "reading")}; the sheet has {Say.Count(answer.Ask.Points, "box", "boxes")}.");
            if (answer.Value is DataMap map)
                foreach (var entry in map.Entries.Where(e => !answer.Ask.Pieces.Contains(e.Key.Value)))
                    Add(findings, entry.Key.At, $"{DeclaredName.Spoken(answer.Ask.Key)} has a row {entry.Key.Value}; the sheet has {Rows(answer.Ask)}.");
        }
    }

    private static string Rows(ReadingAsk ask) => ask.Pieces is [""] ? "one row without a name" : $"{ask.Pieces[0]} to {ask.Pieces[^1]}";

    private static void Add(FindingList findings, Location at, string found) => findings.Add(
        Info,
        at,
        Say.Capital(found),
        "A reading too many shifts all that follow it to another piece.",
        "Compare it with the grid on the paper, row by row.");
}
