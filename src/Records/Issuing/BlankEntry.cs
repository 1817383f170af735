using System.Text;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Issuing;

/// <summary>One entry of the blank: step code, then a line for every value.</summary>
internal static class BlankEntry
{
    private const int CommentColumn = 34;

    public static void Write(StringBuilder blank, SheetEntry entry)
    {
        var step = entry.Step;
        Line(blank, $"  - step: {step.Code}", step.Fills.In(step.Step.Name.Value));
        foreach (var ask in step.Asks.Where(a => a is not CheckAsk))
            Write(blank, ask);
        if (entry.AsksBy)
            Line(blank, "    by:", "");
        if (step.Asks.OfType<CheckAsk>().FirstOrDefault() is { } check)
            Line(blank, $"    {check.Key}:", $"{check.Role}, not the same person");
        if (entry.AsksAt)
            Line(blank, "    at:", "as 2031-06-11T12:41+02:00");
        if (step.MayBeLeftOut)
            Line(blank, $"    {EntryKeys.NotDone}:", "only when the step did not apply: why");
    }

    private static void Write(StringBuilder blank, Ask ask)
    {
        Line(blank, $"    {YamlScalar.Of(ask.Key)}:", Hint(ask));
        if (ask is ReadingAsk { Pieces: not [""] } grid)
            foreach (var piece in grid.Pieces)
                Line(blank, $"      {piece}:", "");
        else if (ask.Turns is { } turns)
            foreach (var turn in turns.Names)
                Line(blank, $"      {YamlScalar.Of(turn)}:", "");
    }

    private static string Hint(Ask ask) => ask switch
    {
        CountAsk a => (a.AtLeast ? "at least " : a.Expected == 0 ? "must be " : "of ") + Say.Number(a.Expected),
        ReadingAsk a => Readings(a),
        LookAsk a => string.Join(" or ", a.Reading.Verdicts.Select(v => v.Value)),
        WorkedAsk a => a.Accept is { } accept ? $"{accept}" : a.Value.Round?.Value.Unit.Symbol ?? "",
        StackAsk a => $"{Say.Number(a.Cells.Length)} in order",
        PassAsk a => $"of {Say.Number(a.Settings.Length)}",
        SettingAsk a => $"dialled, printed is {a.Dial}",
        ChoiceAsk { EndsPart: true } a => $"{a.Outcomes[0]}, when what is performed here ended with it",
        ChoiceAsk { Ends: true } a => $"{a.Outcomes[0]}, when the work ended here; nothing behind it is asked then",
        ChoiceAsk a => string.Join(" or ", a.Outcomes),
        HoldAsk { Blanks: 0 } a => $"passed: {a.Words[0].Trim()}",
        HoldAsk a => string.Join("___", a.Words).Trim(),
        ToolAsk a => string.Join(", ", a.Tools),
        _ => "",
    };

    private static string Readings(ReadingAsk ask)
    {
        var unit = ask.Reading.Resolution?.Value.Unit.Symbol ?? ask.Reading.Plausible?.Value.Unit.Symbol ?? "";
        var limit = ask.Accept is { } accept ? $", {ask.Reading.Judge?.Value ?? "each"} {accept}" : "";
        var upTo = ask.Reading.UpToPoints ? "up to " : "";
        return ask.Points == 1 ? $"in {unit}{limit}" : $"{upTo}{Say.Number(ask.Points)} readings{(ask.Pieces is [""] ? "" : " each")}{At(ask.Reading)}, in {unit}{limit}";
    }

    private static string At(ReadingItem reading) =>
        reading.PointNames.IsEmpty ? "" : $" at {string.Join(", ", reading.PointNames.Select(n => n.Value))}";

    private static void Line(StringBuilder blank, string text, string comment)
    {
        blank.Append(text);
        if (comment.Length > 0)
            blank.Append(' ', Math.Max(1, CommentColumn - text.Length)).Append("# ").Append(comment.ReplaceLineEndings(" "));
        blank.Append('\n');
    }
}
