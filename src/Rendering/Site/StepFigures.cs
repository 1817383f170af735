using Scriban.Runtime;
using Witnessmark.Language.Model;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Checklist.Asks;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Site;

/// <summary>Drawings of a step, the same as on its sheet: the stack it builds, the circle it tightens.</summary>
internal sealed class StepFigures
{
    private readonly ILookup<int, RawHtml> _byStep;

    private StepFigures(ILookup<int, RawHtml> byStep) => _byStep = byStep;

    public static StepFigures Of(ProcedurePart part, Scope scope)
    {
        // a common part has its things from whoever performs it: there is nothing to draw yet
        if (scope.Procedure.IsCommonPart || !part.Steps.Any())
            return new StepFigures(Enumerable.Empty<RawHtml>().ToLookup(_ => 0));
        var words = Words.Of(scope.Procedure.Language?.Value);
        var drawn =
            from outer in SheetPlanner.Plan(scope, part.Name?.Value).Sections.SelectMany(s => s.Steps)
            from step in outer.Performed.Prepend(outer)
            from ask in step.Asks
            let figure = Draw(ask, step, words)
            where figure is not null
            select (outer.Step.Number, figure);
        return new StepFigures(drawn.ToLookup(d => d.Number, d => d.figure));
    }

    public ScriptArray For(Step step) => new(_byStep[step.Number]);

    private static RawHtml? Draw(Ask ask, SheetStep step, Words words) => ask switch
    {
        StackAsk stack => Ladder.Section(stack, step, words),
        PassAsk { Sequence.Length: > 0 } passes => PassBlock.Circle(passes, step, words),
        _ => null,
    };
}
