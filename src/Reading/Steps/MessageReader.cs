using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Facts;
using Witnessmark.Reading.Translations;
using Inline = Witnessmark.Language.Model.Inline;

namespace Witnessmark.Reading.Steps;

/// <summary>Reads a quote as a safety message: <c>&gt; **WORD: nature** rest</c> and bullets.</summary>
internal sealed partial class MessageReader(SourceText source, TextKind kind, FindingList findings)
{
    private readonly ProseReader _prose = new(source, findings);

    /// <summary>The message, or null when the quote is none; then there is a finding.</summary>
    public SafetyMessage? Read(QuoteBlock quote)
    {
        var at = source.AtOf(quote);
        if (Alert(quote) is { } alert)
            return Refuse(alert);
        if (quote.FirstOrDefault() is not ParagraphBlock { Inline.FirstChild: EmphasisInline { DelimiterCount: 2 } strong } head)
            return Refuse(MessageFindings.NoMessage(at));
        var match = WordAndNature.Match(StrongLine(strong).Value);
        if (!match.Success)
            return Refuse(MessageFindings.NoMessage(StrongLine(strong).At));
        var word = StrongLine(strong).Piece(match.Groups["word"]);
        // as words without Markdown; raw HTML and links in it are found here
        var words = WordAndNature.Match(_prose.Inlines.From(strong.FirstChild).Plain()).Groups["nature"].Value.Trim();
        var nature = StrongLine(strong).Piece(match.Groups["nature"]).Trimmed().As(words);
        if (nature.Value.Length == 0)
            findings.Add(MessageFindings.NoNature(word.At, word.Value));
        var rest = _prose.Inlines.From(strong.NextSibling).ToBuilder();
        foreach (var inline in Behind(strong).OfType<EmphasisInline>().Where(SaysSignalWord))
            findings.Add(MessageFindings.TwoInOne(source.AtOf(inline), SignalOf(inline)));
        var (avoid, hazard) = Bullets(quote, rest);
        return new SafetyMessage(word, Signal(word.Value), nature, LeftTrimmed(rest.ToImmutable()), avoid, hazard, at);
    }

    private static IEnumerable<Markdig.Syntax.Inlines.Inline> Behind(EmphasisInline strong)
    {
        for (var inline = strong.NextSibling; inline is not null; inline = inline.NextSibling)
            yield return inline;
    }

    private SafetyMessage? Refuse(Finding finding)
    {
        findings.Add(finding);
        return null;
    }

    private Finding? Alert(QuoteBlock quote)
    {
        if (quote.FirstOrDefault() is not ParagraphBlock head || AlertMarker.Match(source.AtOf(head).Text) is not { Success: true } marker)
            return null;
        return MessageFindings.Alert(source.AtOf(head).Part(0, marker.Length), marker.Groups["word"].Value.ToUpperInvariant());
    }

    private (ImmutableArray<ImmutableArray<Inline>> Avoid, Located<string>? Hazard) Bullets(QuoteBlock quote, ImmutableArray<Inline>.Builder rest)
    {
        var avoid = ImmutableArray.CreateBuilder<ImmutableArray<Inline>>();
        Located<string>? hazard = null;
        foreach (var block in quote.Skip(1))
            switch (block)
            {
                case ListBlock { IsOrdered: false } list:
                    foreach (var item in list.OfType<ListItemBlock>())
                        if (!IsHazard(item, ref hazard) && _prose.Bullet(item) is { Length: > 0 } how)
                            avoid.Add(how);
                    break;
                case ParagraphBlock { Inline.FirstChild: EmphasisInline second } when SaysSignalWord(second):
                    findings.Add(MessageFindings.TwoInOne(source.AtOf(second), SignalOf(second)));
                    break;
                case ParagraphBlock more:
                    rest.Add(new LineBreak(source.AtOf(more)));
                    rest.AddRange(_prose.Inlines.Read(more));
                    break;
                case QuoteBlock or ListBlock:
                    findings.Add(TextFindings.TooDeep(source.AtOf(block)));
                    break;
                default:
                    if (_prose.Read(block) is { } other)
                        findings.Add(TextFindings.NotPrinted(other.At, "A table in a message", "Put it under the heading, and say the danger in words."));
                    break;
            }
        return (avoid.ToImmutable(), hazard);
    }

    /// <summary>Whether the bullet is a fact of the message, right or wrong.</summary>
    private bool IsHazard(ListItemBlock item, ref Located<string>? hazard)
    {
        if (item is not [ParagraphBlock text, ..] || Bullet.Of(source.AtOf(text)) is not { Key: { } key, Value: { } value } bullet)
            return false;
        if (key.Value == "hazard")
        {
            if (kind.IsTranslation)
                findings.Add(TranslationFindings.NotWords(key));
            else if (value.Value.Length == 0)
                findings.Add(MessageFindings.HazardNotNamed(key.At));
            else if (hazard is { } first)
                findings.Add(MessageFindings.TwoHazards(value.At, first.At));
            else
                hazard = value;
            return true;
        }
        if (bullet.Row is null && NearMiss.Of(key.Value, ["hazard"]) is null)
            return false;
        findings.Add(MessageFindings.NotAFact(key.At, key.Value));
        return true;
    }

    private Located<string> StrongLine(EmphasisInline strong)
    {
        var at = source.AtOf(strong);
        return new Located<string>(at.Text[2..^2], at.Part(2, at.Span.Length - 2));
    }

    private bool SaysSignalWord(EmphasisInline inline) => inline.DelimiterCount == 2 && WordAndNature.Match(StrongLine(inline).Value) is { Success: true } match && Signal(match.Groups["word"].Value) is not null;

    private string SignalOf(EmphasisInline inline) => WordAndNature.Match(StrongLine(inline).Value).Groups["word"].Value;

    private SignalWord? Signal(string word) => SheetLanguages.SignalOf(word, kind.Language);

    internal static ImmutableArray<Inline> LeftTrimmed(ImmutableArray<Inline> text) => text switch
    {
        [LineBreak, .. var more] => LeftTrimmed(more),
        [PlainText first, .. var more] when first.Text.TrimStart() is var trimmed && trimmed != first.Text =>
            trimmed.Length == 0 ? LeftTrimmed(more) : [first with { Text = trimmed, At = first.At.Part(first.Text.Length - trimmed.Length, first.At.Span.Length) }, .. more],
        _ => text,
    };

    [GeneratedRegex(@"^(?<word>[\p{L} ]+?) *:\s*(?<nature>.*)$", RegexOptions.Singleline)]
    private static partial Regex WordAndNature { get; }

    [GeneratedRegex(@"^\[!(?<word>[^\]\s]*)\]?")]
    private static partial Regex AlertMarker { get; }
}
