using System.Collections.Immutable;
using Witnessmark.Language.Text;

namespace Witnessmark.Language.Model;

/// <summary>
/// The words of a procedure, a data sheet, a tool list or the workshop file in another language. Words only: every number,
/// count, order and condition stays with the original.
/// </summary>
/// <param name="Of">The id of what it translates; <c>workshop</c> for the workshop file.</param>
/// <param name="Language">The language that it is written in.</param>
public sealed record Translation(SourceText Source, Located<string> Of, Located<string> Language, DataNode Node) : Keeper, IItem
{
    /// <summary>What the workshop file, which has no name of its own, is called here.</summary>
    public const string WorkshopName = "workshop";

    public Located<string> Id => Of.As(IdOf(Of.Value, Language.Value));

    public Located<string>? Title { get; init; }

    /// <summary>Initials of who translated it.</summary>
    public ImmutableArray<Located<string>> Translators { get; init; } = [];

    /// <summary>Null until somebody has read both languages side by side.</summary>
    public Comparison? Compared { get; init; }

    /// <summary>Declared names as they are spoken: <c>friction-disc</c>, or <c>bore-cover = placed</c> for a value of one thing.</summary>
    public ImmutableArray<WordPair> Names { get; init; } = [];

    /// <summary>Texts of the data, each beside its original.</summary>
    public ImmutableArray<WordPair> Texts { get; init; } = [];

    /// <summary>Null for what has no steps.</summary>
    public TranslatedBody? Body { get; init; }

    public static string IdOf(string original, string language) => $"{original}.{language}";
}

/// <summary>A translation was held beside its original by a second reader.</summary>
/// <param name="Mark">Of the safety words that were compared, in both languages.</param>
public sealed record Comparison(Located<string>? By, Located<string>? Date, Located<string>? Mark, Location At);

/// <param name="From">As the original has it.</param>
/// <param name="To">In the language of the translation.</param>
public sealed record WordPair(Located<string> From, Located<string> To);

/// <summary>Headings, steps and messages in the order of the original.</summary>
/// <param name="UnderTitle">Facts under the heading of level one.</param>
public sealed record TranslatedBody(Located<string>? Heading, ImmutableArray<Fact> UnderTitle, ImmutableArray<Block> Introduction, ImmutableArray<ProcedurePart> Parts)
{
    public IEnumerable<Section> Sections => Parts.SelectMany(p => p.Sections);

    public IEnumerable<Step> Steps => Parts.SelectMany(p => p.Steps);

    /// <summary>The step that carries the number; the first where two do.</summary>
    public Step? Step(int number) => Steps.FirstOrDefault(s => s.WrittenNumber.Value == number);
}

/// <summary>The languages that a sheet has words in.</summary>
public static class SheetLanguages
{
    public const string English = "en";
    public const string Spanish = "es";

    public static readonly ImmutableArray<string> All = [English, Spanish];

    /// <summary>es, es-CL … is Spanish, everything else English.</summary>
    public static string Of(string? written) =>
        written is not null && (written == Spanish || written.StartsWith(Spanish + "-", StringComparison.Ordinal)) ? Spanish : English;

    /// <summary>As people call it, in an English sentence.</summary>
    public static string Spoken(string language) => language == Spanish ? "Spanish" : "English";

    /// <summary>ANSI Z535 in English; the four words of NOM and ISO practice in Spanish.</summary>
    public static string Signal(SignalWord word, string language) => (word, language) switch
    {
        (SignalWord.Danger, Spanish) => "PELIGRO",
        (SignalWord.Warning, Spanish) => "ADVERTENCIA",
        (SignalWord.Caution, Spanish) => "PRECAUCIÓN",
        (SignalWord.Notice, Spanish) => "AVISO",
        (SignalWord.Note, Spanish) => "NOTA",
        _ => word.ToString().ToUpperInvariant(),
    };

    /// <summary>The signal word that is written, or null.</summary>
    public static SignalWord? SignalOf(string written, string language)
    {
        foreach (var word in Enum.GetValues<SignalWord>())
            if (Signal(word, language) == written)
                return word;
        return null;
    }
}
