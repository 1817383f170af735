using Witnessmark.Checking.Wording;
using Witnessmark.Checking.Work;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Counts;

/// <summary>Something that is never used twice is fitted, and the step does not say that it is a new one.</summary>
public sealed class SingleUseNotNew : IProcedureRule
{
    public static RuleInfo Info { get; } = new("single-use-not-new", "Counts", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var fitted in scope.Procedure.Amounts())
        {
            // not fitted, or it may go in again
            if (fitted.Fact.Word != FactWord.Fit || Reuse(scope, fitted.Amount.Thing.Value) is not { Value: "never" } never)
                continue;
            // said where the hand is
            if (SaysNew(scope, fitted.Place))
                continue;
            findings.Add(
                Info,
                fitted.Amount.At,
                $"{Say.Step(fitted.Place)} fits {fitted.Amount.Thing.Value} and does not say new; the data sheet says `reuse: never`.",
                "The old one lies in the tray, looks whole and fits. It leaks or works loose later, where nobody looks.",
                "Write it into the step: “new, from the kit”.",
                new FurtherPlace(never.At, "never used twice"));
        }
    }

    private static Located<string>? Reuse(Scope scope, string name) => scope.Part(name)?.Reuse ?? scope.Fasteners(name)?.Reuse;

    private static bool SaysNew(Scope scope, StepInPlace place)
    {
        var said = false;
        WrittenTexts.Read(place.Step, text =>
        {
            foreach (var word in text.Text.Words())
                said |= Words.New.Has(word, scope);
        });
        return said;
    }
}
