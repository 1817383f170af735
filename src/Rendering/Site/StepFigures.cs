using Scriban.Runtime;
using Witnessmark.Language.Model;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Checklist.Asks;
using Witnessmark.Rendering.Figures;
using Witnessmark.Rendering.Site.Drawings;

namespace Witnessmark.Rendering.Site;

/// <summary>Drawings of the steps of a part: the stack it builds, the circle it tightens, the sling it lifts with.</summary>
internal sealed class StepFigures
{
    private readonly ILookup<int, Drawing> _byStep;

    private StepFigures(ILookup<int, Drawing> byStep) => _byStep = byStep;

    public static StepFigures Of(ProcedurePart part, Scope scope)
    {
        // a common part has its things from whoever performs it: there is nothing to draw yet
        if (scope.Procedure.IsCommonPart || !part.Steps.Any())
            return new StepFigures(Enumerable.Empty<Drawing>().ToLookup(_ => 0));
        var words = Words.Of(scope.Procedure.Language?.Value);
        var drawn =
            from outer in SheetPlanner.Plan(scope, part.Name?.Value).Sections.SelectMany(s => s.Steps)
            from step in outer.Performed.Prepend(outer)
            from drawing in step.Asks.SelectMany(a => Draw(a, step, scope, words)).Concat(LiftDrawing.Of(step, scope, words))
            select (outer.Step.Number, drawing);
        return new StepFigures(drawn.ToLookup(d => d.Number, d => d.drawing));
    }

    public ScriptArray For(Step step) => new(_byStep[step.Number].Select(d => d.Model));

    private static IEnumerable<Drawing> Draw(Ask ask, SheetStep step, Scope scope, Words words) => ask switch
    {
        StackAsk stack => Known(StackDrawing.Of(FigureId.Of("stack", step, stack), stack.Stack, scope.Part, words)),
        PassAsk { Sequence.Length: > 0 } passes => Known(Circle(passes, step, words), WrenchDrawing.Of(passes, step, words)),
        _ => [],
    };

    private static Drawing Circle(PassAsk passes, SheetStep step, Words words) =>
        new(PassBlock.Circle(passes, step, Tongue.AsWritten, words, passes.Settings.Length).Markup, $"{words.BoltCircle}. {words.InkEachPass}");

    private static IEnumerable<Drawing> Known(params IEnumerable<Drawing?> drawings) => drawings.OfType<Drawing>();
}
