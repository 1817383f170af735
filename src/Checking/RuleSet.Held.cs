using Witnessmark.Comparing;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Proof;

namespace Witnessmark.Checking;

public static partial class RuleSet
{
    /// <summary>Holds every rule against every sheet and procedure.</summary>
    public static void Check(Library library, FindingList findings)
    {
        // what is missing in the file that could not be read has one cause, and that is told
        if (library.LacksAFile)
            return;
        findings.Each(library.Machines, (machine, own) =>
        {
            foreach (var rule in All)
                rule.Check(machine, library, own);
        });
        findings.Each(library.Procedures, (procedure, own) =>
        {
            var scope = library.ScopeOf(procedure);
            foreach (var rule in All)
                rule.Check(scope, own);
        });
        foreach (var rule in All)
            rule.Check(library, findings);
        findings.Each(library.Translations, (translation, own) =>
        {
            var file = new TranslatedFile(translation, library);
            foreach (var rule in All)
                rule.Check(file, own);
        });
    }

    /// <summary>
    /// Follows every way through each procedure and job. What a procedure breaks by itself is told there, and not again of each job
    /// that performs it.
    /// </summary>
    public static void CheckEveryWay(Library library, FindingList findings)
    {
        if (library.LacksAFile)
            return;
        var proved = library.Procedures.Select(library.ScopeOf).SelectMany(scope => Proofs.Of(scope).Select(part => (scope, part))).ToList();
        var own = proved.SelectMany(p => p.part.Breaches.Where(b => b.At.PerformedBy is null)).Select(Key).ToHashSet();
        foreach (var (scope, part) in proved)
        {
            var work = new ProvedWork(scope, part, [.. part.Breaches.Where(b => b.At.PerformedBy is null || !own.Contains(Key(b)))]);
            foreach (var rule in All)
                rule.Check(work, findings);
        }
    }

    private static (string, int, BreachKind, string?, string?) Key(Breach breach) =>
        (breach.At.Place.Procedure.Id.Value, breach.At.Place.Step.Number, breach.Kind, breach.Rule?.Id.Value, breach.Broken?.At.Text ?? breach.Thing);

    /// <summary>Holds the rules on changes against every procedure that is in both states and differs, and against what they share.</summary>
    public static void CheckChanges(Library old, Library made, WorkshopComparison comparison, FindingList findings)
    {
        if (old.LacksAFile || made.LacksAFile)
            return;
        foreach (var compared in comparison.Procedures)
            if (old.Procedure(compared.Id) is { } before && made.Procedure(compared.Id) is { } after)
                foreach (var rule in All)
                    rule.Check(new ChangedProcedure(old.ScopeOf(before), made.ScopeOf(after), compared), findings);
        foreach (var rule in All)
            rule.Check(new ChangedHouse(old, made, comparison), findings);
    }
}
