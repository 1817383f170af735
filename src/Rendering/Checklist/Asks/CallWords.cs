using Witnessmark.Language.Model;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Rendering.Checklist.Asks;

/// <summary>What is called out in a step and what comes back: written in the step, or a call of the house by name.</summary>
internal sealed record CallWords(string Call, string Answer)
{
    public static CallWords? Of(SheetStep step, SheetContext context)
    {
        if (step.Step.Value<SpokenWords>(FactWord.Call) is not { } spoken)
            return null;
        var answer = step.Step.Value<SpokenWords>(FactWord.Answer)?.Text.Value;
        return context.ScopeOf(step).Call(spoken.Text.Value) is { } named
            ? new CallWords(context.Tongue.Text(named.Call), answer ?? context.Tongue.Text(named.Answer))
            : new CallWords(step.Fills.In(spoken.Text.Value), step.Fills.In(answer ?? ""));
    }
}
