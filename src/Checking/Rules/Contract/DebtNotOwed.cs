using Witnessmark.Checking.Work;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Contract;

/// <summary>Work after which the data sheet wants something later is done, and nobody owes it.</summary>
public sealed class DebtNotOwed : IProcedureRule
{
    public static RuleInfo Info { get; } = new("debt-not-owed", "Contract", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var interlock in scope.Machine?.Interlocks ?? Items<Interlock>.None)
        {
            // a rule of another form
            if (interlock.Owes is not { } owed)
                continue;
            // owed here, or by the job that performs it
            if (Owes(scope.Procedure, owed) || scope.Callers().Any(c => Owes(c, owed)))
                continue;
            foreach (var becoming in interlock.AfterAny.OfType<Becoming>())
                if (FirstDone(scope, becoming) is { } done)
                    findings.Add(
                        Info,
                        done.Fact.At,
                        $"{Say.Step(done.Place)} leaves {becoming.Thing.Value} {becoming.Value.Value}, after which {owed.Value} is due, and {scope.Procedure.Id.Value} does not owe it.",
                        $"{Because(interlock)}What no paper owes is not done: the machine is back at work, and nobody comes to it again.",
                        $"Write it under the heading: `- owes: {owed.Value}`.",
                        new FurtherPlace(owed.At, $"{interlock.Id.Value} of the data sheet"));
        }
    }

    private static string Because(Interlock interlock) => interlock.Because is { } because ? $"{Say.Capital(because.Value)}. " : "";

    private static bool Owes(Procedure procedure, Located<string> owed) =>
        procedure.AllFacts().Any(f => f.Word == FactWord.Owes && Plain(f.Text.Value) == Plain(owed.Value));

    private static string Plain(string text) => string.Join(' ', text.Split(' ', StringSplitOptions.RemoveEmptyEntries));

    private static StepFact? FirstDone(Scope scope, Becoming becoming)
    {
        var verb = ImpliedValues.Verb(becoming.Value.Value);
        foreach (var done in scope.Procedure.StepFacts())
            if ((done.Fact.Word == verb && done.Fact.Handles(becoming.Thing.Value, scope))
                // a common part that is given the group does the tightening
                || (verb == FactWord.Tighten && done.Fact.Value is PerformValue perform && perform.Arguments.Any(a => a.Value.Value == becoming.Thing.Value)))
                return done;
        return null;
    }
}
