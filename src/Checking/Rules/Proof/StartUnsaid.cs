using Witnessmark.Language.Findings;
using Witnessmark.Proof;

namespace Witnessmark.Checking.Rules.Proof;

/// <summary>A rule, a requirement or a promise needs to know something that neither the start nor a step says.</summary>
public sealed class StartUnsaid : IWayRule
{
    public static RuleInfo Info { get; } = new("start-unsaid", "Proof", Severity.Query);

    public static void Check(ProvedWork proved, FindingList findings)
    {
        foreach (var breach in proved.Breaches)
        {
            // known, and told by another rule
            if (breach.Sure)
                continue;
            findings.Add(
                Info,
                breach.At.Place.Step.Name.At,
                $"{Telling.Begin(breach.At)} is safe only when {Asked(breach)}{(breach.Rule is { } rule ? $" ({rule.Id})" : "")}, and nothing says how that is.",
                Telling.Because(breach.Rule, "What nobody says is taken for granted by everybody, each in his own way."),
                breach.Rule?.Never is null
                    ? $"When it is so from the start, write `- starts-with: {Telling.Written(breach)}` under the heading; otherwise let a step bring it about."
                    : $"Say under the heading how it is from the start, `- starts-with: …`, so that `{Telling.Written(breach)}` cannot be.",
                [.. Telling.Story(breach)]);
        }
    }

    private static string Asked(Breach breach) => breach.Rule?.Never is { } never ? $"`{never}` is not so" : $"`{Telling.Written(breach)}`";
}
