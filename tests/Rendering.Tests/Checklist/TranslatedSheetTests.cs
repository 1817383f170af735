using System.Collections.Immutable;
using System.Text;
using System.Text.RegularExpressions;
using Witnessmark.Compiler;
using Witnessmark.Harness;
using Witnessmark.Language.Text;

namespace Witnessmark.Rendering.Tests.Checklist;

/// <summary>The demo in Spanish: the same sheet, other words.</summary>
public sealed partial class TranslatedSheetTests
{
    private const string English = "sheets/wb-40-a4.html";
    private const string Spanish = "sheets/wb-40-es-a4.html";

    private static readonly Lazy<ImmutableDictionary<string, string>> Demo = new(() => Built());

    public static TheoryData<string, string> Papers => new()
    {
        { English, Spanish },
        { "sheets/wb-40-letter.html", "sheets/wb-40-es-letter.html" },
        { "sheets/wb-40--tags-a4.html", "sheets/wb-40--tags-es-a4.html" },
        { "sheets/wb-40--card-a4.html", "sheets/wb-40--card-es-a4.html" },
    };

    [Fact]
    public void The_Spanish_sheet_reads_as_approved() =>
        Approved.Check("Rendering.Tests/Checklist/wb-40-es.approved.html", Markup.Body(Demo.Value[Spanish]));

    [Theory]
    [MemberData(nameof(Papers))]
    public void The_numbers_are_exactly_those_of_the_original_in_its_order(string english, string spanish)
    {
        var numbers = Numbers(Demo.Value[english]);
        Assert.True(numbers.Count > 30);
        Assert.Equal(numbers, Numbers(Demo.Value[spanish]));
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public void No_word_of_the_original_is_left(string english, string spanish) =>
        // stamped on the tool, or the same in both languages
        Assert.Equal([], Words(Demo.Value[spanish]).Intersect(Words(Demo.Value[english])).Except(["depth", "gauge", "micrometer", "sling", "leg", "lbf", "deg", "min", "radio", "okr", "local", "torque", "use", "chromium"]).Order());

    [Theory]
    [MemberData(nameof(Papers))]
    public void The_page_says_which_language_it_is_in(string english, string spanish)
    {
        Assert.StartsWith("<!doctype html>\n<html lang=\"en\">", Demo.Value[english], StringComparison.Ordinal);
        Assert.StartsWith("<!doctype html>\n<html lang=\"es\">", Demo.Value[spanish], StringComparison.Ordinal);
    }

    [Fact]
    public void Steps_hash_and_square_code_are_those_of_the_original()
    {
        Assert.Equal(Codes(Demo.Value[English]), Codes(Demo.Value[Spanish]));
        Assert.Equal(Hash(Demo.Value[English]), Hash(Demo.Value[Spanish]));
        Assert.Equal(Markup.Between(Demo.Value[English], "url(\"data:image", "\")"), Markup.Between(Demo.Value[Spanish], "url(\"data:image", "\")"));
    }

    [Fact]
    public void A_translated_print_names_the_words_that_were_read_and_the_original_does_not()
    {
        Assert.Matches("texto\u00A0[0-9A-F]{4}\u00A0[0-9A-F]{4}\u00A0[0-9A-F]{4}", Demo.Value[Spanish]);
        Assert.DoesNotMatch(@"words\s[0-9A-F]{4}", Demo.Value[English]);
    }

    [Fact]
    public void Every_tag_and_every_leaf_of_a_translated_print_names_the_words_too()
    {
        var tags = Demo.Value["sheets/wb-40--tags-es-a4.html"];
        Assert.Equal(Markup.Count(tags, "<section class=\"leaf\">") + Markup.Count(tags, "<article class=\"cut"), Wording().Count(tags));
        Assert.All(Wording().Matches(tags), m => Assert.Equal(WordsMark(Demo.Value[Spanish]), m.Value));
        Assert.Equal(0, Wording().Count(Demo.Value["sheets/wb-40--tags-a4.html"]));
    }

    [Theory]
    [InlineData("wheel-end/wb-40.es.md", "Quitar la tapa", "Sacar la tapa")]
    [InlineData("common/wb-60.es.md", "Revisar la llave", "Ver la llave")]
    [InlineData("machines/okr-34.es.yaml", "tapa del alojamiento", "tapa de la cavidad")]
    [InlineData("workshop.es.yaml", "al hospital ya", "al hospital en seguida")]
    public void Another_word_on_the_sheet_is_another_mark_of_words(string path, string from, string to)
    {
        var changed = Built((path, from, to));
        Assert.NotEqual(WordsMark(Demo.Value[Spanish]), WordsMark(changed[Spanish]));
        Assert.Equal(Hash(Demo.Value[Spanish]), Hash(changed[Spanish]));
        Assert.Equal(Demo.Value[English], changed[English]);
    }

    [Theory]
    [InlineData("wheel-end/wb-40.es.md", "nadie en la cabina.", "alguien en la cabina.")]
    [InlineData("workshop.es.yaml", "¿manos fuera?", "¿manos dentro?")]
    public void Another_warning_or_call_is_not_printed_until_it_was_compared_again(string path, string from, string to)
    {
        var files = Repo.Files(Repo.OneBrake).Select(f => Changed(f, [(path, from, to)])).ToList();
        var stale = Assert.Single(Pipeline.Check(files).Findings);
        Assert.Equal("comparison-stale", stale.Rule.Name);
        Assert.DoesNotContain(Spanish, Built((path, from, to)).Keys);
        var mark = NewMark().Match(stale.PutRight).Groups[1].Value;
        var compared = Built((path, from, to), ("wheel-end/wb-40.es.md", "mark: C80C", $"mark: {mark}"));
        Assert.Contains(to, compared[Spanish], StringComparison.Ordinal);
    }

    [Fact]
    public void Another_torque_is_printed_in_both_languages_and_leaves_the_words_as_they_are()
    {
        var changed = Built(("machines/okr-34.yaml", "torque: 235 ± 12 N·m", "torque: 230 ± 12 N·m"));
        Assert.Contains("230 ± 12 N·m", changed[English], StringComparison.Ordinal);
        Assert.Contains("230 ± 12 N·m", changed[Spanish], StringComparison.Ordinal);
        Assert.Equal(WordsMark(Demo.Value[Spanish]), WordsMark(changed[Spanish]));
        Assert.NotEqual(Hash(Demo.Value[Spanish]), Hash(changed[Spanish]));
    }

    [Theory]
    [InlineData("wheel-end/wb-40.md", "Take the cover off** the bore.", "Take the cover off** the bore, and hang it up.")]
    [InlineData("common/wb-60.es.md", "9. **Aflojar la llave** hasta su marca más baja y guardarla en su caja.\n    - original: 4C30\n", "")]
    [InlineData("machines/okr-34.es.yaml", "  bore-cover: tapa del alojamiento\n", "")]
    [InlineData("wheel-end/wb-40.es.md", "menos de 2 m de él", "menos de 3 m de él")]
    public void What_is_stale_or_missing_or_other_is_not_printed_and_the_original_is(string path, string from, string to)
    {
        var changed = Built((path, from, to));
        Assert.DoesNotContain(Spanish, changed.Keys);
        Assert.Contains(English, changed.Keys);
        Assert.DoesNotContain("wb-40-es", changed["procedures/wb-40.html"], StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_translator_writes_stays_words()
    {
        const string Attack = "<script>alert()</script>";
        var changed = Built(
            ("wheel-end/wb-40.es.md", "title: Armar y cerrar el paquete de discos", $"title: {Attack}"),
            ("wheel-end/wb-40.es.md", "**Quitar la tapa**", @"**Quitar \<script\>alert()\</script\>**"),
            ("machines/okr-34.es.yaml", "bore-cover: tapa del alojamiento", $"bore-cover: {Attack}"),
            ("machines/okr-34.es.yaml", "es: placa a la chatarra; tomar una nueva y medirla.", $"es: {Attack}"),
            ("workshop.es.yaml", "mechanic: mecánico", $"mechanic: {Attack}"));
        foreach (var page in new[] { Spanish, "sheets/wb-40--tags-es-a4.html", "sheets/wb-40--card-es-a4.html" })
        {
            Assert.Contains("&lt;script&gt;", changed[page], StringComparison.Ordinal);
            Assert.DoesNotContain("<script", changed[page], StringComparison.OrdinalIgnoreCase);
        }
    }

    private static ImmutableDictionary<string, string> Built(params (string Path, string From, string To)[] changes)
    {
        var files = Repo.Files(Repo.OneBrake).Select(f => Changed(f, changes)).ToList();
        return Pipeline.Build(Pipeline.Check(files), "0.0.0").ToImmutableDictionary(f => f.Path, f => Encoding.UTF8.GetString(f.Bytes.Span));
    }

    private static RawFile Changed(RawFile file, (string Path, string From, string To)[] changes)
    {
        var text = Encoding.UTF8.GetString(file.Bytes.Span);
        foreach (var (_, from, to) in changes.Where(c => c.Path == file.Path))
        {
            Assert.Contains(from, text, StringComparison.Ordinal);
            text = text.Replace(from, to, StringComparison.Ordinal);
        }
        return RawFile.Of(file.Path, Encoding.UTF8.GetBytes(text));
    }

    private static string Visible(string html) => System.Net.WebUtility.HtmlDecode(Tag().Replace(Drawing().Replace(Markup.Between(html, "<main>", "</main>"), m => $" {m.Value} "), " "));

    private static List<string> Numbers(string html) => [.. Number().Matches(Wording().Replace(Visible(html), "")).Select(m => m.Value)];

    private static IEnumerable<string> Words(string html) => Word().Matches(Visible(html)).Select(m => m.Value.ToLowerInvariant()).Distinct();

    private static List<string> Codes(string html) => [.. Code().Matches(html).Select(m => m.Value)];

    private static string Hash(string html) => Identity().Match(html).Groups[1].Value;

    private static string WordsMark(string html) => Wording().Match(html).Value;

    [GeneratedRegex("<svg.*?</svg>", RegexOptions.Singleline)]
    private static partial Regex Drawing();

    [GeneratedRegex("<[^>]+>", RegexOptions.Singleline)]
    private static partial Regex Tag();

    [GeneratedRegex(@"[A-Z]*[0-9]+(?:[.,x][0-9]+)*")]
    private static partial Regex Number();

    [GeneratedRegex(@"\b\p{L}{3,}\b")]
    private static partial Regex Word();

    [GeneratedRegex("(?<=<h3 class=\"code\" aria-label=\")[0-9./]+")]
    private static partial Regex Code();

    [GeneratedRegex(@"WB-40 2\.1\.0 · ([0-9A-F ]{14})")]
    private static partial Regex Identity();

    [GeneratedRegex("`mark: ([0-9A-F]{4})`")]
    private static partial Regex NewMark();

    [GeneratedRegex("texto[0-9A-F\u00A0]{15}")]
    private static partial Regex Wording();
}
