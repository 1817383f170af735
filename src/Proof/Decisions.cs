using Witnessmark.Language.Model;

namespace Witnessmark.Proof;

/// <summary>Decisions that a step takes by what was read before it.</summary>
internal sealed class Decisions(Proving proving)
{
    /// <summary>The first outcome whose condition holds; where none does, the decision is not taken.</summary>
    public void Take(string decision, StepInPlace place, Doing doing)
    {
        var left = doing.Guard;
        foreach (var outcome in place.Step.All(FactWord.Outcome).Select(f => f.Value).OfType<OutcomeValue>())
        {
            var asking = proving.Work.Ask(doing);
            var holds = outcome.Otherwise ? Ways.Yes : outcome.When.Aggregate(Ways.No, (any, c) => proving.Ways.Or(any, proving.Settled(c, asking, doing.At)));
            var on = proving.Ways.And(left, holds);
            proving.Situation.Write(decision, on, proving.Ways.Always(proving.Worths.Number(outcome.Name.Value)), doing.At);
            left = proving.Ways.And(left, proving.Ways.Not(holds));
        }
    }
}
