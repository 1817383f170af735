using Witnessmark.Language.Findings;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>A time that can be read in two ways, or not at all.</summary>
public sealed class TimeUnclear : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Fault("time-unclear");

    public static void Check(Held held, FindingList findings)
    {
        foreach (var (time, _) in Times.Of(held).Where(t => Typed.Time(t.Text.Value) is null))
            findings.Add(
                Info,
                time.At,
                $"{time.Value} is no full time.",
                "03/04 is two days, and 6:40 without its offset two hours. The order of the work is told from these times.",
                "Write date, T, time and offset: 2031-06-11T12:41+02:00.");
    }
}
