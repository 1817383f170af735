using System.Collections.Immutable;
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
    private static readonly StepFigures None = new(Enumerable.Empty<Drawing>().ToLookup(_ => 0), []);

    private readonly ILookup<int, Drawing> _byStep;
    private readonly ImmutableArray<Drawing> _overview;

    private StepFigures(ILookup<int, Drawing> byStep, ImmutableArray<Drawing> overview) => (_byStep, _overview) = (byStep, overview);

    /// <param name="which">Number of the part, from 0.</param>
    public static StepFigures Of(ProcedurePart part, int which, Scope scope)
    {
        // a common part has its things from whoever performs it: there is nothing to draw yet
        if (scope.Procedure.IsCommonPart || !part.Steps.Any())
            return None;
        var words = Words.Of(scope.Procedure.Language?.Value);
        var plan = SheetPlanner.Plan(scope, part.Name?.Value);
        var drawn =
            from outer in plan.Sections.SelectMany(s => s.Steps)
            from step in outer.Performed.Prepend(outer)
            let decisions = new DecisionDrawing(plan, step, words)
            from drawing in step.Asks.SelectMany(a => Draw(a, step, scope, words).Concat(Known(decisions.Of(a)))).Concat(LiftDrawing.Of(step, scope, words))
            select (outer.Step.Number, drawing);
        // a whole job drawn step by step would be a wall: its flow shows what it performs as one
        var overview = scope.Procedure.IsJob ? Known(JobDrawing.Of(plan, FigureId.Of("job", which), words)) : Known(CrewDrawing.Of(plan, FigureId.Of("crew", which), words), StateDrawing.Of(plan, FigureId.Of("states", which), words));
        return new StepFigures(drawn.ToLookup(d => d.Number, d => d.drawing), [.. overview]);
    }

    public ScriptArray For(Step step) => new(_byStep[step.Number].Select(d => d.Model));

    /// <summary>Of the part as a whole: who works when, what is in the machine when.</summary>
    public ScriptArray Overview => new(_overview.Select(d => d.Model));

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
