using System.Collections.Immutable;
using Witnessmark.Language.Model;

namespace Witnessmark.Comparing;

/// <summary>What a crew reads in its own language: a message that is lost there is lost for those who read it there.</summary>
internal static class TranslationChanges
{
    private static readonly ImmutableHashSet<string> Unread = ["translators", "compared"];

    /// <param name="only">Ids of procedures that are looked at.</param>
    public static IEnumerable<Change> Between(Library old, Library made, IReadOnlySet<string>? only) =>
        old.Translations.Names.Union(made.Translations.Names).Order(StringComparer.Ordinal).Select(id => (old.Translations.Find(id), made.Translations.Find(id)))
            .Where(t => only is null || only.Contains((t.Item2 ?? t.Item1)!.Of.Value))
            .SelectMany(t => Between(t.Item1, t.Item2));

    private static IEnumerable<Change> Between(Translation? old, Translation? made)
    {
        var any = (made ?? old)!;
        var where = $"{any.Of.Value} in {SheetLanguages.Spoken(any.Language.Value)}";
        if (old is null || made is null)
            return [new Change(ChangeClass.Hazard, where, "translation", old is null ? null : "there", made is null ? null : "there") { Sense = made is null ? Sense.Looser : Sense.Other }];
        return
        [
            .. DataChanges.Between(where, old.Node, made.Node, Unread).Select(AsText),
            .. Bodies(where, old.Body, made.Body),
        ];
    }

    // names and texts are keyed by what they translate, so no key tells what they can do
    private static Change AsText(Change change) => StepChanges.Text(change.Where, change.What, change.Old ?? "", change.New ?? "") with { OldAt = change.OldAt, NewAt = change.NewAt };

    private static IEnumerable<Change> Bodies(string where, TranslatedBody? old, TranslatedBody? made)
    {
        foreach (var change in Words($"{where}, heading of the sheet", "text", old?.Heading?.Value, made?.Heading?.Value)
            .Concat(Words($"{where}, introduction", "text", BlockText.Of(old?.Introduction ?? []), BlockText.Of(made?.Introduction ?? []))))
            yield return change;
        var (before, after) = (old?.Sections.ToList() ?? [], made?.Sections.ToList() ?? []);
        for (var i = 0; i < Math.Max(before.Count, after.Count); i++)
            foreach (var change in Sections(where, before.ElementAtOrDefault(i), after.ElementAtOrDefault(i)))
                yield return change;
        foreach (var number in Numbers(old).Union(Numbers(made)).Order())
            foreach (var change in Steps($"{where}, step {number}", old?.Step(number), made?.Step(number)))
                yield return change;
    }

    private static IEnumerable<int> Numbers(TranslatedBody? body) => body?.Steps.Select(s => s.WrittenNumber.Value) ?? [];

    private static IEnumerable<Change> Sections(string where, Section? old, Section? made) =>
    [
        .. Words($"{where}, section {(made ?? old)!.Heading?.Value}", "heading", old?.Heading?.Value, made?.Heading?.Value),
        .. Words($"{where}, section {(made ?? old)!.Heading?.Value}", "text", BlockText.Of(old?.Prose ?? []), BlockText.Of(made?.Prose ?? [])),
        .. MessageChanges.InTranslation(where, old?.Messages ?? [], made?.Messages ?? []),
    ];

    private static IEnumerable<Change> Steps(string where, Step? old, Step? made)
    {
        if (old is null || made is null)
            return [new Change(ChangeClass.Hazard, where, "step", old?.NameWithStop, made?.NameWithStop) { Sense = made is null ? Sense.Looser : Sense.Other, OldAt = old?.At, NewAt = made?.At }];
        return
        [
            .. Words(where, "name", old.Name.Value, made.Name.Value),
            .. Words(where, "text", old.Text.Plain(), made.Text.Plain()),
            .. Words(where, "remark", string.Join(" · ", old.Remarks.Select(r => r.Plain())), string.Join(" · ", made.Remarks.Select(r => r.Plain()))),
            .. Words(where, "further text", BlockText.Of(old.Blocks), BlockText.Of(made.Blocks)),
            .. MessageChanges.InTranslation(where, old.Messages, made.Messages),
            .. FactChanges.Between(where, Spoken(old), Spoken(made)),
        ];
    }

    private static ImmutableArray<Fact> Spoken(Step step) => [.. step.Facts.Where(f => f.Value is SpokenWords)];

    private static IEnumerable<Change> Words(string where, string what, string? old, string? made) => (old ?? "") == (made ?? "") ? [] : [StepChanges.Text(where, what, old ?? "", made ?? "")];
}
