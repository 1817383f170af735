using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Compiler;

/// <summary>Why a copy may not be issued: guard by guard.</summary>
internal static class Refusals
{
    public static Refusal? Of(Library library, IssueOrder order)
    {
        // nothing of that name
        if (library.Procedure(order.Procedure) is not { } procedure)
            return new Refusal($"There is no procedure {order.Procedure} in this workshop.", Meant(order.Procedure, library.Procedures.Names));
        // what is not released is for reading only
        if (procedure.Status?.Value != ReleaseStatus.Released)
            return new Refusal($"{order.Procedure} is not released, so it is not for work.", "Have it approved and set status: released, or issue another version.");
        // a common part has no machine and no sheet
        if (procedure.IsCommonPart)
            return new Refusal($"{order.Procedure} is a common part: it is printed inside the procedures that perform it.", $"Issue one of them: {Performers(library, procedure)}.");
        return PartRefusal(procedure, order) ?? MachineRefusal(library, procedure, order) ?? PaperRefusal(order);
    }

    private static Refusal? PartRefusal(Procedure procedure, IssueOrder order)
    {
        var parts = procedure.Parts.Select(p => p.Name?.Value).OfType<string>().ToList();
        if (order.Part is { } part && !parts.Contains(part))
            return new Refusal($"{order.Procedure} has no part {part}.", parts.Count == 0 ? "It is done in one piece: leave --part out." : $"Its parts are {string.Join(", ", parts)}.");
        if (order.Part is null && procedure.Parts.Length > 1)
            return new Refusal($"{order.Procedure} is done in parts.", $"Name one with --part: {string.Join(", ", parts)}.");
        return null;
    }

    private static Refusal? MachineRefusal(Library library, Procedure procedure, IssueOrder order)
    {
        // initials that the workshop does not know
        if (library.Workshop.People.Find(order.IssuedBy) is null)
            return new Refusal($"The workshop does not know {order.IssuedBy}.", $"Initials are under people: in workshop.yaml: {string.Join(", ", library.Workshop.People.Names)}.");
        // what goes on paper, into a file and through a reader must be a plain number or name
        foreach (var (option, value) in new[] { ("--unit", order.Unit), ("--serial", order.Serial), ("--place", order.Place) })
            if (!IsPlain(value))
                return new Refusal($"{option} {value} is not a number or name.", "Use up to 30 letters, digits and hyphens.");
        var applies = procedure.AppliesTo?.Value;
        // a serial that the procedure was not written for
        if (applies?.Serials is { } serials && !serials.Value.Contains(order.Serial))
            return new Refusal($"{order.Procedure} is for serials {serials.Value}, not for {order.Serial}.", "Look at the plate again, or use the procedure for that machine.");
        // a place that it was not written for
        if (applies is { Positions.IsEmpty: false } && applies.Positions.All(p => p.Value != order.Place))
            return new Refusal($"{order.Procedure} is for {string.Join(", ", applies.Positions.Select(p => p.Value))}, not for {order.Place}.", "Name the place with --place.");
        return null;
    }

    private static Refusal? PaperRefusal(IssueOrder order) =>
        order.Paper is null || order.Paper.ToUpperInvariant() is "A4" or "LETTER" ? null : new Refusal($"There is no paper {order.Paper}.", "--paper takes A4 or Letter.");

    private static bool IsPlain(string value) => value.Length is > 0 and <= 30 && value.All(c => char.IsAsciiLetterOrDigit(c) || c == '-');

    private static string Performers(Library library, Procedure common) => string.Join(", ", library.Procedures
        .Where(p => p.Steps.SelectMany(s => s.All(FactWord.Perform)).Any(f => f.Value is PerformValue v && v.Procedure.Value == common.Id.Value))
        .Select(p => p.Id.Value).DefaultIfEmpty("none performs it yet"));

    private static string Meant(string written, IEnumerable<string> known) => NearMiss.Of(written, known) is { } near
        ? $"Did you mean {near}?"
        : known.ToList() switch
        {
            [] => "There is none yet.",
            [var only] => $"There is {only}.",
            var all => $"There are {string.Join(", ", all)}.",
        };
}
