using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>Boxes left empty in a grid of readings.</summary>
public sealed class ReadingsTooFew : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Query("readings-too-few");

    public static void Check(Held held, FindingList findings)
    {
        foreach (var answer in held.Answers<ReadingAsk>())
        {
            var rows = answer.Rows().ToList();
            if (rows.Any(r => r.Unclear is not null))
                continue;
            if (answer.Ask.Pieces is not [""] && answer.Value is not DataMap)
                Add(findings, answer, answer.Value.At, $"{DeclaredName.Spoken(answer.Ask.Key)} is in one line; the sheet has a row for each of {Rows(answer.Ask)}.");
            // a loop ends when what it looks for is found
            else if (answer.Ask.Turns is not { MayEnd: true } && answer.Ask.Pieces.Except(rows.Select(r => r.Piece)).ToList() is { Count: > 0 } missing)
                Add(findings, answer, answer.Value.At, $"{DeclaredName.Spoken(answer.Ask.Key)} of {Say.Some(missing)} is missing.");
            foreach (var row in rows.Where(r => !answer.Ask.Reading.UpToPoints && r.Numbers.Length < answer.Ask.Points))
                Add(findings, answer, row.At, $"{answer.Name(row)} has {Say.Count(row.Numbers.Length, "reading")}; the sheet has {answer.Ask.Points} boxes.");
        }
    }

    private static string Rows(ReadingAsk ask) => $"{ask.Pieces[0]} to {ask.Pieces[^1]}";

    private static void Add(FindingList findings, Answer<ReadingAsk> answer, Location at, string found) => findings.Add(
        Info,
        at,
        Say.Capital(found),
        "One place shows neither a taper nor a dished plate; the worst place of the worst piece decides.",
        $"Type the rest from the paper, one row a piece as in the blank. Empty there too: measure it ({answer.Entry.Says}).");
}
