using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>The copy had come to its end before the work was typed.</summary>
public sealed class CopySpoiled : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Query("copy-spoiled");

    public static void Check(Held held, FindingList findings)
    {
        if (held is not { SignOff.Copy: { } mark, Copy: { } copy } || held.Library.Register.End(copy) is not { End: CopyEnd.Spoiled } end)
            return;
        findings.Add(
            Info,
            mark.At,
            $"Copy {copy.Mark} was called spoiled on {end.Date}{(end.Why is { } why ? $": {why}" : "")}.",
            "A spoiled copy is out of use. Whoever worked from it may have worked from a sheet that could not be read, or one that was called back.",
            "Ask who worked from it and when. If the work was done before that day, have a second person say so; if not, do it again from a copy in force.",
            new FurtherPlace(end.Mark.At, "the register says so here"));
    }
}
