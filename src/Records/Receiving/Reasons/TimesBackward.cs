using Witnessmark.Language.Findings;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>Signed before something that comes before it on the sheet.</summary>
public sealed class TimesBackward : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Fault("times-backward");

    public static void Check(Held held, FindingList findings)
    {
        (Signed Before, DateTimeOffset Time)? last = null;
        foreach (var signed in Times.Of(held))
        {
            if (Typed.Time(signed.Text.Value) is not { } time)
                continue;
            if (last is { } l && time < l.Time)
                findings.Add(
                    Info,
                    signed.Text.At,
                    $"{signed.What} is signed {signed.Text.Value}, before {Lower(l.Before.What)}, {l.Before.Text.Value}.",
                    "Either the order of the sheet was left, or times were written in afterwards.",
                    "Put the time right if it was typed wrong. If the work was done in another order, say so under deviations and have it allowed.",
                    new FurtherPlace(l.Before.Text.At, "the earlier step"));
            else
                last = (signed, time);
        }
    }

    private static string Lower(string what) => char.ToLowerInvariant(what[0]) + what[1..];
}
