using Witnessmark.Language.Wording;
using Witnessmark.Reading.Shapes;

namespace Witnessmark.House.Tests.Documents;

/// <summary>In words, what stands behind a key.</summary>
internal static class FormWords
{
    public static string Of(Holds holds) => holds switch
    {
        One one => Of(one.Form),
        Many { Most: { } most } many => $"list, at most {most}: {Of(many.Form)}",
        Many many => $"list: {Of(many.Form)}",
        Below => "keys, below",
        Each { ShortFor: { } key } => $"names of yours, each with keys or with the `{key}` alone",
        Each => "names of yours, each with keys",
        Members => "list, each with keys",
        Anything => "anything",
        _ => throw new InvalidOperationException($"no words for {holds}"),
    };

    private static string Of(Form form) => form switch
    {
        TextForm => "words",
        NameForm => "a name",
        IdForm => "a file's name",
        WordForm word => Say.Or(word.Words.Select(MarkdownTable.Typed)),
        CountForm count => $"whole number, {count.Least} to {count.Most}",
        FactorForm => "number without a unit",
        SizeForm size => Of(size),
        SpelledForm { Name: [.., 's'] } several => several.Name,
        SpelledForm spelled => Say.Article(spelled.Name),
        _ => throw new InvalidOperationException($"no words for {form}"),
    };

    private static string Of(SizeForm size) => size.Size switch
    {
        Size.Quantity => size.Kind ?? "a quantity",
        Size.Toleranced => $"{size.Kind ?? "a quantity"}, ± if you like",
        Size.Range => size.Kind is { } kind ? $"range of {kind}" : "a range",
        Size.Share => "share in %",
        _ => "two shares in %",
    };
}
