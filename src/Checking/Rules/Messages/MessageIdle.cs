using Witnessmark.Checking.Work;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Messages;

/// <summary>No step that a message reaches meets its hazard.</summary>
public sealed class MessageIdle : IProcedureRule
{
    public static RuleInfo Info { get; } = new("message-idle", "Messages", Severity.Query);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var reach in MessageReach.Of(scope))
        {
            // it warns of a step, or stands behind one
            if (!reach.Reached.IsEmpty || reach.IsLate)
                continue;
            // what is performed here may meet it
            if (reach.Performs)
                continue;
            var works = reach.Hazard.MetBy.Select(w => $"{w.Value.Verb.Spelled()} {w.Value.Thing.Value}");
            findings.Add(
                Info,
                reach.Message.Word.At,
                $"This {reach.Message.Word.Value} warns of {reach.Hazard.Id.Value}, and no step from here to the end of the section meets it.",
                "A message before harmless work teaches people to skip messages.",
                $"Move it to the section where it is met ({Say.Or(works)}), or take it out.",
                new FurtherPlace(reach.Hazard.Id.At, "the hazard and what work meets it"));
        }
    }
}
