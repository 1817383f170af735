using System.Text;
using System.Text.RegularExpressions;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Records.Hashing;

namespace Witnessmark.Comparing.Tests;

/// <summary>Every small thing of the demo, changed one at a time: where it stands, what it becomes, and the least that may be said of it.</summary>
internal sealed record Mutant(string Path, int At, string From, string To, ChangeClass Least)
{
    public IReadOnlyList<RawFile> Over(IReadOnlyList<RawFile> files) => [.. files.Select(f => f.Path == Path ? RawFile.Of(Path, Encoding.UTF8.GetBytes(Laid(Encoding.UTF8.GetString(f.Bytes.Span)))) : f)];

    public override string ToString() => $"{Path}: {From} becomes {To}";

    private string Laid(string text) => text[..At] + To + text[(At + From.Length)..];
}

/// <summary>Mutants by kind. What the least class of a key is stands here once more, by hand, and not as the program has it.</summary>
internal static partial class Mutants
{
    private static readonly HashSet<string> MethodFacts = ["tool", "tools", "time", "by", "odds"];
    private static readonly HashSet<string> MethodKeys = ["basis", "pitch-circle", "across-flats", "scale", "driven-by", "title"];

    /// <summary>Every number in an item that the procedure reaches, one greater in its last digit.</summary>
    public static IEnumerable<Mutant> Numbers(Library library, string id)
    {
        var scope = library.ScopeOf(library.Procedure(id)!);
        foreach (var item in Reached.From(scope).Values.DistinctBy(i => i.Id.At))
            foreach (var (key, value) in Texts(item.Id.Value, item.Node))
                // text of data that is only read is not a number of the machine
                if (!MethodKeys.Contains(key) && value.At.Source.Path.EndsWith(".yaml", StringComparison.Ordinal))
                    foreach (var number in Figure().Matches(value.At.Text).Cast<Match>())
                        yield return new Mutant(value.At.Source.Path, value.At.Span.Start + number.Index, number.Value, Greater(number.Value), ChangeClass.Hazard);
    }

    /// <summary>Every fact of every step, gone.</summary>
    public static IEnumerable<Mutant> Facts(Procedure procedure) => procedure.Steps.SelectMany(s => s.Facts).Select(f =>
    {
        var content = f.At.Source.Content;
        var from = content.LastIndexOf('\n', f.At.Span.Start) + 1;
        var to = content.IndexOf('\n', f.At.Span.End) is var end and >= 0 ? end + 1 : content.Length;
        return new Mutant(f.At.Source.Path, from, content[from..to], "", MethodFacts.Contains(f.Word.Spelled()) ? ChangeClass.Method : ChangeClass.Hazard);
    });

    /// <summary>Every line of every message, gone, and every word of weight in it replaced.</summary>
    public static IEnumerable<Mutant> MessageLines(Procedure procedure)
    {
        foreach (var message in procedure.Walk().SelectMany(p => p.MessagesInForce).Distinct(ReferenceEqualityComparer.Instance).Cast<SafetyMessage>())
            foreach (var line in Line().Matches(message.At.Text).Cast<Match>())
            {
                var at = message.At.Span.Start + line.Index;
                if (line.Value.StartsWith("> -", StringComparison.Ordinal))
                    yield return new Mutant(message.At.Source.Path, at, line.Value, "", ChangeClass.Hazard);
                foreach (var word in LongWord().Matches(line.Value).Cast<Match>().Where(w => !line.Value.Contains("hazard:", StringComparison.Ordinal)))
                    yield return new Mutant(message.At.Source.Path, at + word.Index, word.Value, "something", ChangeClass.Hazard);
            }
    }

    /// <summary>Every word of the steps' texts, gone.</summary>
    public static IEnumerable<Mutant> StepWords(Procedure procedure) => procedure.Steps.Where(s => s.Text.Length > 0).SelectMany(s =>
    {
        var text = s.Text.Plain();
        var at = s.At.Source.Content.IndexOf(text, s.At.Span.Start, StringComparison.Ordinal);
        return at < 0 ? [] : AnyWord().Matches(text).Cast<Match>().Select(w => new Mutant(s.At.Source.Path, at + w.Index, w.Value, "", ChangeClass.Wording));
    });

    /// <summary>Lines and blanks that mean nothing.</summary>
    public static IEnumerable<Mutant> Layout(IReadOnlyList<RawFile> files)
    {
        foreach (var file in files)
        {
            var text = Encoding.UTF8.GetString(file.Bytes.Span);
            foreach (var blank in Blank().Matches(text).Cast<Match>())
                yield return new Mutant(file.Path, blank.Index, blank.Value, blank.Value + "\n", ChangeClass.None);
            if (file.Path.EndsWith(".yaml", StringComparison.Ordinal))
                foreach (var colon in Colon().Matches(text).Cast<Match>())
                    yield return new Mutant(file.Path, colon.Index, colon.Value, ":   ", ChangeClass.None);
        }
    }

    private static IEnumerable<(string Key, DataText Value)> Texts(string key, DataNode node) => node switch
    {
        DataText text => [(key, text)],
        DataMap map => map.Entries.SelectMany(e => Texts(e.Key.Value, e.Value)),
        DataList list => list.Items.SelectMany(i => Texts(key, i)),
        _ => [],
    };

    private static string Greater(string number) => number[..^1] + (char)(number[^1] == '9' ? '8' : number[^1] + 1);

    [GeneratedRegex(@"\d+(?:\.\d+)?")]
    private static partial Regex Figure();

    [GeneratedRegex(@"^>.*\n?", RegexOptions.Multiline)]
    private static partial Regex Line();

    [GeneratedRegex(@"(?<![\p{L}*])[a-z]{5,}(?!\p{L})")]
    private static partial Regex LongWord();

    [GeneratedRegex(@"\p{L}+ ?")]
    private static partial Regex AnyWord();

    [GeneratedRegex(@"\n\n(?=\S)")]
    private static partial Regex Blank();

    [GeneratedRegex(@"(?<=^ *[a-z-]+): (?=\w)", RegexOptions.Multiline)]
    private static partial Regex Colon();
}
