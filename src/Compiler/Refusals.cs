using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Records.Issuing;

namespace Witnessmark.Compiler;

/// <summary>Why a copy may not be issued, or a specimen not be printed: guard by guard.</summary>
internal static class Refusals
{
    private const int LongestName = 60;

    public static Refusal? Of(Bench bench, IssueOrder order)
    {
        var library = bench.Library;
        if (Unknown(library, order.Procedure) is { } unknown)
            return unknown;
        var procedure = library.Procedure(order.Procedure)!;
        // what is not released is for reading only
        if (procedure.Status?.Value != ReleaseStatus.Released)
            return new Refusal($"{order.Procedure} is not released, so it is not for work.", "Have it approved and set status: released, or issue another version.");
        return CommonPart(library, procedure, "Issue") ?? UnknownPart(procedure, order.Part) ?? NoPart(procedure, order.Part)
            ?? RegisterRefusal(library, procedure, order) ?? MachineRefusal(library, procedure, order) ?? PaperRefusal(order.Paper) ?? LanguageRefusal(bench, procedure, order);
    }

    /// <summary>Why no specimen may be printed. What is not released may be: a specimen is to look at.</summary>
    public static Refusal? Of(Library library, PrintOrder order)
    {
        if (PaperRefusal(order.Paper) is { } paper)
            return paper;
        if (order.Procedure is null)
            return order.Part is null ? null : new Refusal("--part says which part, and of which procedure nobody said.", "Name the procedure: witnessmark print WB-40 --part strip.");
        if (Unknown(library, order.Procedure) is { } unknown)
            return unknown;
        var procedure = library.Procedure(order.Procedure)!;
        return CommonPart(library, procedure, "Print") ?? UnknownPart(procedure, order.Part);
    }

    /// <summary>Why no sheet is tried.</summary>
    public static Refusal? Of(Library library, TrialOrder order)
    {
        if (order.Procedure is null)
            return order.Part is null ? null : new Refusal("--part says which part is tried, and no trial kit was asked for.", "Name the procedure: witnessmark build --trial-kit WB-40 --part strip.");
        if (Unknown(library, order.Procedure) is { } unknown)
            return unknown;
        var procedure = library.Procedure(order.Procedure)!;
        return CommonPart(library, procedure, "Try") ?? UnknownPart(procedure, order.Part);
    }

    // nothing of that name
    private static Refusal? Unknown(Library library, string id) =>
        library.Procedure(id) is null ? new Refusal($"There is no procedure {id} in this workshop.", Meant(id, library.Procedures.Names)) : null;

    // a common part has no machine and no sheet
    private static Refusal? CommonPart(Library library, Procedure procedure, string verb) => procedure.IsCommonPart
        ? new Refusal($"{procedure.Id} is a common part: it is printed inside the procedures that perform it.", $"{verb} one of them: {Performers(library, procedure)}.")
        : null;

    private static Refusal? UnknownPart(Procedure procedure, string? part)
    {
        var parts = Parts(procedure);
        return part is null || parts.Contains(part)
            ? null
            : new Refusal($"{procedure.Id} has no part {part}.", parts.Count == 0 ? "It is done in one piece: leave --part out." : $"Its parts are {string.Join(", ", parts)}.");
    }

    private static Refusal? NoPart(Procedure procedure, string? part) => part is null && procedure.Parts.Length > 1
        ? new Refusal($"{procedure.Id} is done in parts.", $"Name one with --part: {string.Join(", ", Parts(procedure))}.")
        : null;

    private static List<string> Parts(Procedure procedure) => [.. procedure.Parts.Select(p => p.Name?.Value).OfType<string>()];

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

    private static Refusal? RegisterRefusal(Library library, Procedure procedure, IssueOrder order)
    {
        var version = procedure.Version?.Value ?? "";
        // released in its file, and nobody has put that on record
        if (library.Register.Find(procedure.Id.Value, version) is not { } released)
            return new Refusal($"{procedure.Id} {version} is not in the register of released versions.", $"witnessmark release {procedure.Id} --by {order.IssuedBy} puts it there.");
        // another one holds
        if (library.Register.InForce(procedure.Id.Value) is not { } inForce || inForce != released)
            return new Refusal($"{procedure.Id} {version} is not in force.", library.Register.InForce(procedure.Id.Value) is { } other ? $"{procedure.Id} {other.Version} is: issue that one." : "It was withdrawn: release another version.");
        // it stands in one line of the register
        if (order.To is { Length: > LongestName })
            return new Refusal($"--to is {order.To.Length} characters long.", $"Initials or a name of up to {LongestName} characters.");
        // nobody else may have the first sign of his marks
        return library.Workshop.People.Find(order.IssuedBy) is { MarkSigns: null }
            ? new Refusal($"{order.IssuedBy} has no sign of his own for the marks of copies.", $"Give one in workshop.yaml: {order.IssuedBy}: {{…, mark-signs: {FreeSign(library)}}}. Nobody else may have it.")
            : null;
    }

    private static char FreeSign(Library library) =>
        SetMark.Alphabet.First(sign => library.Workshop.People.All(p => p.MarkSigns?.Value.Contains(sign, StringComparison.Ordinal) is not true));

    private static Refusal? PaperRefusal(string? paper) =>
        paper is null || paper.ToUpperInvariant() is "A4" or "LETTER" ? null : new Refusal($"There is no paper {paper}.", "--paper takes A4 or Letter.");

    private static Refusal? LanguageRefusal(Bench bench, Procedure procedure, IssueOrder order)
    {
        var own = SheetTranslations.LanguageOf(bench.Library, procedure);
        if (order.Language is not { } language || language == own)
            return null;
        // a language that sheets have no words in
        if (!SheetLanguages.All.Contains(language))
            return new Refusal($"No sheet is printed in {language}.", $"--language takes {string.Join(" or ", SheetLanguages.All)}.");
        // translated in part, or against words that have changed since
        if (SheetWording.Translated(bench, procedure, language) is null)
            return new Refusal(
                $"{procedure.Id.Value} is not translated into {SheetLanguages.Spoken(language)} to the end.",
                "witnessmark check says what is missing. In its own language it can be issued: leave --language out.");
        return null;
    }

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
