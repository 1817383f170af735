using System.Globalization;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Records.Hashing;
using Witnessmark.Records.Issuing;
using Witnessmark.Records.Sheets;
using Witnessmark.Records.Tags;
using Witnessmark.Rendering.Checklist;
using Witnessmark.Rendering.Fender;
using Witnessmark.Rendering.Tags;

namespace Witnessmark.Compiler;

/// <summary>Makes a copy, or says why not.</summary>
internal static class Issuing
{
    public static MadeCopy Copy(Bench bench, IssueOrder order)
    {
        var library = bench.Library;
        if (Refusals.Of(bench, order) is { } refusal)
            return MadeCopy.Refused(refusal.What, refusal.Todo);
        var procedure = library.Procedure(order.Procedure)!;
        var wording = SheetWording.In(order.Language, bench, procedure);
        var unmarked = new CopyIdentity(ProcedureHash.Of(library, procedure), order.Unit, order.Serial, order.Place, At(order), order.IssuedBy)
        {
            Part = order.Part,
            Words = wording.Hash is { } translated ? CopyWords.Of(wording.Words.Language, translated) : null,
        };
        if (Mark(library, unmarked) is not { } mark)
            return MadeCopy.Refused(
                $"Every mark that {order.IssuedBy} can give is on a copy that is out.",
                "Say of copies what became of them (witnessmark returned, witnessmark spoiled), or give one more of mark-signs in workshop.yaml.");
        var copy = unmarked with { Mark = mark };
        return Made(order, procedure, wording, copy);
    }

    private static MadeCopy Made(IssueOrder order, Procedure procedure, SheetWording wording, CopyIdentity copy)
    {
        var version = procedure.Version!.Value.Value;
        var identity = new SheetIdentity(
            procedure.Id.Value, version, copy.Hash.Hex, copy.Mark, order.Unit, order.Serial, order.Place, Printed(order), SheetIdentity.OwnTemplateHash)
        {
            WordsHash = wording.Hash,
        };
        var name = $"{procedure.Id.Value}{(order.Part is null ? "" : $"-{StepName.Slug(order.Part)}")}-{copy.Mark}";
        // what the blank asks for is the same in every language
        var blank = BlankSignOff.Write(SheetPlanner.Plan(wording.Scope.Library.ScopeOf(procedure), order.Part), copy);
        return new MadeCopy(copy.Mark, version, copy.Hash.Short12, [.. Pages(name, wording, identity, order), OutputFile.Of($"{name}.yaml", blank)], Refusal: null)
        {
            Line = text => RegisterLines.Issued(text, order, procedure, copy),
            Wording = wording.Hash is { } words ? $"{SheetLanguages.Spoken(wording.Words.Language)}, words {ShortHash.Of(words)}" : "",
        };
    }

    private static string? Mark(Library library, CopyIdentity copy)
    {
        var isOut = library.Register.Out.Select(c => c.Mark.Value).ToHashSet(StringComparer.OrdinalIgnoreCase);
        return SetMark.Free(library.Workshop.People.Find(copy.IssuedBy)!.MarkSigns!.Value.Value, copy.Lines, isOut.Contains);
    }

    private static IEnumerable<OutputFile> Pages(string name, SheetWording wording, SheetIdentity identity, IssueOrder order)
    {
        var plan = SheetPlanner.Plan(wording.Scope, order.Part);
        var paper = PaperOf(order.Paper ?? wording.Scope.Library.Workshop.Paper?.Value);
        yield return OutputFile.Of($"{name}.html", SheetPage.Render(plan, identity, paper, wording.Words));
        yield return OutputFile.Of($"{name}-card.html", FenderCard.Render(plan, identity with { TemplateHash = FenderCard.OwnTemplateHash }, paper, wording.Words));
        var tags = TagPlanner.Plan(plan);
        if (!tags.IsEmpty)
            yield return OutputFile.Of($"{name}-tags.html", TagPage.Render(tags, plan, identity with { TemplateHash = TagPage.OwnTemplateHash }, paper, wording.Words));
    }

    public static Paper PaperOf(string? name) => string.Equals(name, nameof(Paper.Letter), StringComparison.OrdinalIgnoreCase) ? Paper.Letter : Paper.A4;

    private static string At(IssueOrder order) => order.IssuedAt.ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture);

    private static string Printed(IssueOrder order) => order.IssuedAt.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
}
