using System.Collections.Immutable;
using Witnessmark.Language.Wording;
using Witnessmark.Reading.Shapes;
using static Witnessmark.House.Tests.Documents.MarkdownTable;

namespace Witnessmark.House.Tests.Documents;

/// <summary>The keys of a kind of file: a table of its own, then one for each kind of thing below it, in reading order. A kind that was told is not told again.</summary>
internal sealed class KeyTables
{
    private readonly HashSet<Shape> _told = [];

    public IEnumerable<string> Of(Choice choice) => Shapes(choice).SelectMany((shape, i) => i == 0 ? Whole(shape, null) : Besides(shape, choice.Else));

    private static IEnumerable<Shape> Shapes(Choice choice) => choice.By.Select(t => t.Shape).Prepend(choice.Else).Distinct();

    /// <param name="under">The key it stands under; null for a whole file.</param>
    private IEnumerable<string> Whole(Shape shape, string? under)
    {
        if (!_told.Add(shape))
            return [];
        var rows = Rows(shape).ToList();
        var head = under is null ? [] : new[] { $"### Under {Typed(under)}{(shape.What == Typed(under) || shape.What == under ? "" : $": {shape.What}")}", "" };
        return [.. head, .. Table(rows), .. Needed(shape), "", .. rows.SelectMany(r => Below(r.Row))];
    }

    /// <summary>What one of two forms of a file has that the other has not.</summary>
    private IEnumerable<string> Besides(Shape shape, Shape other)
    {
        if (!_told.Add(shape))
            return [];
        var own = Rows(shape).Where(r => !other.Rows.Contains(r.Row)).ToList();
        return own.Count == 0 ? [] : [$"### With `{shape.Name}:` in its place", "", $"All of the above but `{other.Name}`, and:", "", .. Table(own), .. Needed(shape), "", .. own.SelectMany(r => Below(r.Row))];
    }

    private static IEnumerable<(string Key, Row Row)> Rows(Shape shape)
    {
        var rows = shape.Rows.Select(r => (Typed(r.Key), r));
        return shape.Other is { } other ? rows.Append(($"a name of yours, as {Typed(other.Key)}", other)) : rows;
    }

    private static IEnumerable<string> Table(IEnumerable<(string Key, Row Row)> rows) =>
        MarkdownTable.Of(["key", "says", "holds", "example"], rows.Select(r => new[] { r.Key, r.Row.Needed ? $"{r.Row.Meaning}. **Must be there**" : r.Row.Meaning, FormWords.Of(r.Row.Holds), Typed(Example(r.Row)) }));

    private IEnumerable<string> Below(Row row) => row.Holds switch
    {
        Below below => Whole(below.Shape, row.Key),
        Each each => Whole(each.Shape, row.Key),
        Members members => Shapes(members.Choice).SelectMany(s => Whole(s, row.Key)),
        _ => [],
    };

    private static string Example(Row row) => row.Holds switch
    {
        Each => $"a-name: {row.Example}",
        Members => $"- {row.Example}",
        _ => row.Example,
    };

    private static IEnumerable<string> Needed(Shape shape) => shape.Needs.SelectMany(n => new[] { "", Sentence(n) });

    private static string Sentence(Need need) => need switch
    {
        FirstBegun begun => $"Besides, one of these must be there, and whole: {Say.Or(begun.Sets.Select(Together))}.",
        Unless unless => $"{Typed(unless.Key)} must be there unless {Typed(unless.Other)} is {Typed(unless.Value)}.",
        OneWhole one => $"Exactly one of these forms, and that one whole: {Say.Or(one.Sets.Select(Together))}.",
        _ => throw new InvalidOperationException($"no sentence for {need}"),
    };

    private static string Together(ImmutableArray<string> keys) => string.Join(" with ", keys.Select(Typed));
}
