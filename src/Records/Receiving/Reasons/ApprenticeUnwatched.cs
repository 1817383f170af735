using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>Somebody in training for this procedure without a mechanic who watched.</summary>
public sealed class ApprenticeUnwatched : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Fault("apprentice-unwatched");

    public static void Check(Held held, FindingList findings)
    {
        var procedure = held.Procedure!.Id.Value;
        foreach (var member in held.SignOff.Crew)
        {
            if (!InTraining(held.Library, member.Initials.Value, procedure))
                continue;
            var watcher = member.ObservedBy?.Value;
            // watched by himself or by one who is learning it too is not watched
            if (!string.IsNullOrWhiteSpace(watcher) && watcher != member.Initials.Value && !InTraining(held.Library, watcher, procedure))
                continue;
            findings.Add(
                Info,
                member.ObservedBy?.At ?? member.Initials.At,
                $"{member.Initials.Value} is in training for {procedure}, and {(string.IsNullOrWhiteSpace(watcher) ? "nobody watched" : $"{watcher} cannot be the one who watched")}.",
                "One who is learning it does not yet know what wrong looks like.",
                "Write behind observed-by who watched and is trained for it. If nobody did, a mechanic goes through the work again.");
        }
    }

    private static bool InTraining(Library library, string initials, string procedure) =>
        library.Workshop.People.Find(initials)?.InTraining.Any(t => t.Value == procedure) == true;
}
