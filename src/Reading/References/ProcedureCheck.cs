using System.Collections.Immutable;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Reading.Faults;

namespace Witnessmark.Reading.References;

/// <summary>Holds all names of one procedure against what is declared.</summary>
internal sealed class ProcedureCheck
{
    private readonly Scope _scope;
    private readonly NameCheck _names;

    private ProcedureCheck(Scope scope, NameShelf shelf, FindingList findings)
    {
        _scope = scope;
        _names = new NameCheck(shelf.BookOf(scope), name => scope.Parameter(name) is { } p ? PerformCheck.KindOf(p.Kind.Value) : null, findings);
    }

    public static void Check(Scope scope, NameShelf shelf, FindingList findings)
    {
        var check = new ProcedureCheck(scope, shelf, findings);
        check.FrontMatter();
        // without its machine every name would be unknown: one cause, one finding
        if (scope.Procedure.Machine is not null && scope.Machine is null)
            return;
        foreach (var part in scope.Procedure.Parts)
            check.Part(part);
    }

    private void FrontMatter()
    {
        var procedure = _scope.Procedure;
        if (procedure.Machine is { } machine)
            _names.Must(machine, NameKind.Machine, "machine");
        foreach (var list in procedure.UsesTools)
            _names.Must(list, NameKind.ToolList, "uses-tools");
        foreach (var role in procedure.Crew.Select(c => c.Role))
            if (_scope.Library.Workshop.Roles.Count > 0 && !_scope.IsRole(role.Value))
                _names.Findings.Add(UnknownRole(role));
        foreach (var pin in procedure.Uses)
            Pin(pin);
        new OwnItemsCheck(_names).Check(procedure.Readings, procedure.Tests, procedure.Hazards, procedure.Devices);
    }

    private Finding UnknownRole(Located<string> role) => new(
        StepFaults.NameUnknown,
        role.At,
        $"The role `{role.Value}` is not one of the workshop's.",
        "What a role may do is written once, in the workshop file; an unknown role may do anything.",
        NearMiss.Of(role.Value, _scope.Library.Workshop.Roles.Names) is { } near ? $"Did you mean `{near}`?" : $"Its roles are {Say.Or(_scope.Library.Workshop.Roles.Names)}.")
    {
        Correction = Correction.Respelled(role, _scope.Library.Workshop.Roles.Names),
    };

    private void Pin(Pin pin)
    {
        var known = _names.Must(pin.Procedure, NameKind.Procedure, "uses");
        if (known.IsEmpty || _scope.Library.Procedure(pin.Procedure.Value)?.Version is not { } version || version.Value == pin.Version.Value)
            return;
        _names.Findings.Add(
            StepFaults.PinDiffers,
            pin.Version.At,
            $"{pin.Procedure.Value} is pinned at {pin.Version.Value}, and the workshop has {version.Value}.",
            "This procedure was read and approved with another version of those steps.",
            $"Read what has changed in {pin.Procedure.Value}, then write `{pin.Procedure.Value}: {version.Value}`.",
            new FurtherPlace(version.At, $"the workshop has {version.Value}"));
    }

    private void Part(ProcedurePart part)
    {
        var slugs = new Lazy<ImmutableArray<string>>(() => [.. part.Steps.Select(s => s.Slug)]);
        ImmutableArray<string> ofPart = [.. Loops(part.Facts)];
        Within([]).Check(part.Facts);
        foreach (var section in part.Sections)
        {
            ImmutableArray<string> ofSection = [.. ofPart, .. Loops(section.Facts)];
            Within(ofPart).Check(section.Facts);
            var check = Within(ofSection);
            foreach (var message in section.Messages)
                Hazard(message);
            foreach (var step in section.Steps)
            {
                foreach (var message in step.Messages)
                    Hazard(message);
                (step.Find(FactWord.ForEach) is null ? check : Within([.. ofSection, .. Loops(step.Facts)])).Check(step.Facts);
                StepNames(step, slugs);
            }
        }
    }

    private static IEnumerable<string> Loops(ImmutableArray<Fact> facts) => facts.Select(f => f.Value).OfType<Loop>().Select(l => l.Kind.Value);

    /// <summary>The facts inside of these loops.</summary>
    private FactCheck Within(IReadOnlyCollection<string> loops) => new(_scope, _names, new PlaceCheck(_names, loops));

    private void Hazard(SafetyMessage message)
    {
        if (message.Hazard is { } hazard)
            _names.Must(hazard, NameKind.Hazard, "hazard");
    }

    /// <summary><c>again-from</c> and <c>checks</c> name a step of the same part.</summary>
    private void StepNames(Step step, Lazy<ImmutableArray<string>> slugs)
    {
        foreach (var fact in step.Facts)
            if (NamedStep(fact) is { } name && !slugs.Value.Contains(name.Value))
                _names.Findings.Add(
                    StepFaults.NameUnknown,
                    name.At,
                    $"No step of this part is named `{name.Value}`.",
                    "Whoever follows the sheet would look for a step that is not there.",
                    NearMiss.Of(name.Value, slugs.Value) is { } near ? $"Did you mean `{near}`?" : "Write the step's name in lower case with hyphens, without its last stop.");
    }

    private static Located<string>? NamedStep(Fact fact) => (fact.Word, fact.Value) switch
    {
        (FactWord.Checks, NameList { Names: [var one, ..] }) => one,
        (FactWord.AgainFrom, AgainFrom again) => again.Step,
        _ => null,
    };
}
