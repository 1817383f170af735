using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Reading.Faults;

namespace Witnessmark.Reading.References;

/// <summary>Holds a performed procedure against what is there: its part, what it takes, its pinned version.</summary>
internal sealed class PerformCheck(Scope scope, NameCheck names, PlaceCheck places)
{
    public void Check(PerformValue perform, Location at)
    {
        var isThis = perform.Procedure.Value == "this";
        if (!isThis)
            Pinned(perform.Procedure);
        if ((isThis ? scope.Procedure : scope.Library.Procedure(perform.Procedure.Value)) is not { } callee)
            return;
        Part(perform, callee, at);
        Given(perform, callee, at);
    }

    /// <summary>A pin of a procedure that is not there is reported at the pin, also when it is a slip for this one.</summary>
    private void Pinned(Located<string> id)
    {
        var pins = scope.Procedure.Uses.Select(p => p.Procedure.Value).ToList();
        if (pins.Contains(id.Value) || pins.Any(p => scope.Library.Procedure(p) is null && NearMiss.Of(p, [id.Value]) is not null))
            return;
        var known = names.Must(id, NameKind.Procedure, "perform");
        if (known.IsEmpty || scope.Library.Procedure(id.Value) is not { } callee)
            return;
        names.Findings.Add(new Finding(
            StepFaults.PinMissing,
            id.At,
            $"`{id.Value}` is performed here, and no version of it is pinned.",
            "When it is changed later, this procedure would change with it and nobody would have read it again.",
            $"Add `{id.Value}: {callee.Version?.Value ?? "1.0.0"}` under `uses:` in the front matter.")
        {
            Further = [new FurtherPlace(callee.Id.At, $"`{id.Value}` is here")],
            Correction = callee.Version is { } version ? NewPin.In(scope.Procedure, id.Value, version.Value) : null,
        });
    }

    private void Part(PerformValue perform, Procedure callee, Location at)
    {
        var parts = callee.Parts.Select(p => p.Name?.Value).OfType<string>().ToList();
        var nameless = callee.Parts.Any(p => p.Name is null);
        if (perform.Part is { } part && callee.Part(part.Value) is null)
            names.Findings.Add(
                StepFaults.NameUnknown,
                part.At,
                $"{callee.Id.Value} has no part `{part.Value}`.",
                "Steps that are not there would not be done, and the sheet would look complete.",
                NearMiss.Of(part.Value, parts) is { } near ? $"Did you mean `{near}`?" : parts.Count == 0 ? "It is one piece: leave the part out." : $"Its parts are {Say.Or(parts)}.",
                new FurtherPlace(callee.Id.At, $"`{callee.Id.Value}` is here"));
        else if (perform.Part is null && !nameless)
            names.Findings.Add(
                StepFaults.ArgumentMissing,
                at,
                $"{callee.Id.Value} is done in parts, and none is named here.",
                "Each part has its own moment: doing all of them here would put back what was just taken off.",
                $"Name one: `{callee.Id.Value} part {parts.FirstOrDefault()}`.",
                new FurtherPlace(callee.Id.At, $"its parts are {Say.Or(parts)}"));
    }

    private void Given(PerformValue perform, Procedure callee, Location at)
    {
        foreach (var argument in perform.Arguments)
        {
            if (callee.Takes.FirstOrDefault(t => t.Name.Value == argument.Name.Value) is { } taken)
                names.Must(argument.Value, KindOf(taken.Kind.Value), $"{callee.Id.Value} {taken.Name.Value}");
            else
                names.Findings.Add(NotTaken(argument, callee));
            if (argument.AtPlace is { } place)
                places.Check(place);
        }
        foreach (var taken in callee.Takes.Where(t => !t.MayBeLeftOut && perform.Arguments.All(a => a.Name.Value != t.Name.Value)))
            names.Findings.Add(
                StepFaults.ArgumentMissing,
                at,
                $"{callee.Id.Value} is given no `{taken.Name.Value}` here.",
                "Its steps say `{" + taken.Name.Value + "}`: without it they do not say with what, or on what.",
                $"Add `{taken.Name.Value} = …`, {KindOf(taken.Kind.Value).InWords()}.",
                new FurtherPlace(taken.Name.At, "it is asked for here"));
    }

    private static Finding NotTaken(Argument argument, Procedure callee) => new(
        StepFaults.ParameterUnknown,
        argument.Name.At,
        $"{callee.Id.Value} does not take `{argument.Name.Value}`.",
        "What is given and not taken changes nothing on the sheet, though whoever wrote it thinks so.",
        NearMiss.Of(argument.Name.Value, callee.Takes.Select(t => t.Name.Value)) is { } near ? $"Did you mean `{near}`?"
            : callee.Takes.IsEmpty ? "It takes nothing: leave it out."
            : $"It takes {Say.Or(callee.Takes.Select(t => t.Name.Value))}.")
    {
        Further = [new FurtherPlace(callee.Id.At, $"`{callee.Id.Value}` is here")],
    };

    public static NameKind KindOf(string parameterKind) => parameterKind switch
    {
        "fasteners" => NameKind.Fasteners,
        "part" => NameKind.Part,
        "device" => NameKind.Placed,
        _ => NameKind.Tool,
    };
}
