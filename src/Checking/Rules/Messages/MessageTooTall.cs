using Witnessmark.Engineering.Printing;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Messages;

/// <summary>A message is too tall to be repeated where its steps go on to another page.</summary>
public sealed class MessageTooTall : IProcedureRule
{
    public static RuleInfo Info { get; } = new("message-too-tall", "Messages", Severity.Query);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var section in scope.Procedure.Parts.SelectMany(p => p.Sections))
        {
            var left = MessageRoom.Page;
            var above = 0;
            foreach (var message in section.Messages.Concat(section.Steps.SelectMany(s => s.Messages)))
            {
                var lines = MessageRoom.Lines(Paragraphs(message));
                var most = MessageRoom.MostLines(left);
                // it is repeated
                if (lines > most)
                    findings.Add(Info, message.Nature.At, Found(message, lines, above, most),
                        "Who turns the page in the middle of the work has to meet the message again before the next grip. This one would stand on the first page only.",
                        "Cut it to what happens and how to stay clear, or begin a new section where the danger ends.");
                left -= MessageRoom.Height(lines);
                above++;
            }
        }
    }

    private static string Found(SafetyMessage message, int lines, int above, int most) =>
        $"This {message.Word.Value} takes {Say.Count(lines, "line")}; {(above == 0 ? "at the top of a page" : $"below {Say.Count(above, "message")} of its section")} there is room for {most} to be repeated.";

    private static IEnumerable<string> Paragraphs(SafetyMessage message) =>
        message.Avoid.Select(a => a.Plain()).Prepend($"{message.Nature.Value} {message.Rest.Plain()}");
}
