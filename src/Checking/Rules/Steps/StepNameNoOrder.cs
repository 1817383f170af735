using System.Buffers;
using Witnessmark.Checking.Wording;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Steps;

/// <summary>The name of a step does not begin with what to do.</summary>
public sealed class StepNameNoOrder : IProcedureRule
{
    public static RuleInfo Info { get; } = new("step-name-no-order", "Steps", Severity.Query);

    private static readonly SearchValues<char> Vowels = SearchValues.Create("aeiouyáéíóúAEIOUYÁÉÍÓÚ");

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var step in scope.Procedure.Steps)
        {
            var first = step.Name.Value.Words().Next();
            // an order, or at least nothing that is certainly none; where there are no words the reader says so
            if (!Words.NotAnOrder.Has(first, scope) && !IsGoingOn(first, scope))
                continue;
            findings.Add(
                Info,
                step.Name.At,
                $"The name of step {step.Number} of {scope.Procedure.Id.Value} begins with “{step.Name.Value.Split(' ')[0]}”, not with what to do.",
                "The first word is the one that is read with the work in hand. When it is the verb, the step can be called across the machine.",
                "Begin with the verb, as you would call it out: Fit, Measure, Take off.");
        }
    }

    /// <summary>"Fitting the ring". Bring, swing, sling have no vowel before their -ing and are orders.</summary>
    private static bool IsGoingOn(ReadOnlySpan<char> word, Scope scope) =>
        scope.IsSpanish()
            ? HasEnding(word, "ando") || HasEnding(word, "iendo") || HasEnding(word, "yendo")
            : HasEnding(word, "ing");

    private static bool HasEnding(ReadOnlySpan<char> word, string ending) =>
        word.EndsWith(ending, StringComparison.OrdinalIgnoreCase) && word[..^ending.Length].ContainsAny(Vowels);
}
