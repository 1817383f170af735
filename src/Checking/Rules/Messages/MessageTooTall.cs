using System.Globalization;
using Witnessmark.Engineering.Printing;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Messages;

/// <summary>A message, or those in force at one step together, are too tall to be repeated where the steps go on to another page.</summary>
public sealed class MessageTooTall : IProcedureRule
{
    public static RuleInfo Info { get; } = new("message-too-tall", "Messages", Severity.Query);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var section in scope.Procedure.Parts.SelectMany(p => p.Sections))
        {
            var force = section.Messages.Aggregate(Force.None, (above, message) => Below(above, message, findings));
            foreach (var step in section.Steps)
            {
                force = step.Messages.Aggregate(force, (above, message) => Below(above, message, findings));
                foreach (var fact in step.All(FactWord.Perform))
                    // none of its messages is too tall because of those above
                    if (Performed(fact.Value as PerformValue, force, scope) is { } tall)
                        findings.Add(Info, fact.Text.At, tall.Says($"with those of {((PerformValue)fact.Value).Procedure.Value}"), Why, tall.PutRight);
            }
        }
    }

    private const string Why =
        "Who turns the page in the middle of the work has to meet each message again before the next grip. The last one would stand on the first page only.";

    private static Force Below(Force above, SafetyMessage message, FindingList findings)
    {
        var force = above.And(message);
        // it is repeated
        if (force.LastIsTooTall)
            findings.Add(Info, message.Nature.At, force.Count == 1 ? force.SaysOfOne(message.Word.Value) : force.Says("here"), Why, force.PutRight);
        return force;
    }

    /// <summary>A common part that is too tall by itself says so where it stands.</summary>
    private static Force? Performed(PerformValue? perform, Force above, Scope scope)
    {
        if (perform is null || above.Count == 0 || scope.Library.Procedure(perform.Procedure.Value) is not { } common)
            return null;
        foreach (var section in common.Parts.Where(p => perform.Part is null || p.Name?.Value == perform.Part.Value.Value).SelectMany(p => p.Sections))
        {
            var (all, alone) = (above, Force.None);
            foreach (var message in section.Messages.Concat(section.Steps.SelectMany(s => s.Messages)))
            {
                (all, alone) = (all.And(message), alone.And(message));
                if (all.LastIsTooTall && !alone.LastIsTooTall)
                    return all;
            }
        }
        return null;
    }

    private sealed record Force(int Count, MessagesInForce A4, MessagesInForce Letter)
    {
        public static Force None { get; } = new(0, new(MessageRoom.A4), new(MessageRoom.Letter));

        public bool LastIsTooTall => !A4.LastIsRepeated || !Letter.LastIsRepeated;

        public string PutRight => A4.LastMayHave < 1 || Letter.LastMayHave < 1
            ? "Begin a new section where the danger ends, or say two of them in one."
            : $"Cut the last one to {Say.Count(A4.LastMayHave, "line")} on A4 and {Say.Number(Letter.LastMayHave)} on Letter, or begin a new section where the danger ends.";

        public Force And(SafetyMessage message)
        {
            var paragraphs = message.Avoid.Select(a => a.Plain()).Prepend($"{message.Nature.Value} {message.Rest.Plain()}").ToList();
            return new(Count + 1, A4.And(paragraphs), Letter.And(paragraphs));
        }

        public string Says(string where) =>
            $"The {Say.Count(Count, "message")} in force {where} take {Both(A4.Take, Letter.Take)}; the next page repeats {Both(A4.Repeated, Letter.Repeated)}.";

        public string SaysOfOne(string word) =>
            $"This {word} takes {Both(A4.Take, Letter.Take)}; the next page repeats one of up to {Both(MessageRoom.Height(A4.LastMayHave), MessageRoom.Height(Letter.LastMayHave))}.";

        private static string Both(double a4, double letter) =>
            Mm(a4) == Mm(letter) ? $"{Mm(a4)} on A4 and Letter" : $"{Mm(a4)} on A4 and {Mm(letter)} on Letter";

        private static string Mm(double millimetres) => string.Create(CultureInfo.InvariantCulture, $"{millimetres:0} mm");
    }
}
