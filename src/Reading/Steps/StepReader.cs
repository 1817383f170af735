using System.Collections.Immutable;
using System.Globalization;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Facts;
using Block = Witnessmark.Language.Model.Block;
using Inline = Witnessmark.Language.Model.Inline;

namespace Witnessmark.Reading.Steps;

/// <summary>Reads one item of a numbered list as a step.</summary>
internal sealed class StepReader(SourceText source, TextKind kind, FindingList findings)
{
    private const string Stops = ".,;:";

    private readonly ProseReader _prose = new(source, findings);

    /// <param name="number">The number it prints as.</param>
    /// <param name="messages">Messages directly before it.</param>
    public Step Read(ListItemBlock item, int number, ImmutableArray<SafetyMessage> messages)
    {
        var written = WrittenNumber(item);
        var (name, text) = NameAndText(item, written);
        var facts = new FactList(kind.Step, findings);
        // most steps have neither
        var remarks = ImmutableArray.CreateBuilder<ImmutableArray<Inline>>(0);
        var blocks = ImmutableArray.CreateBuilder<Block>(0);
        for (var i = 1; i < item.Count; i++)
            switch (item[i])
            {
                case ListBlock { IsOrdered: true } list:
                    findings.Add(StepFindings.ListInStep(source.AtOf(list), number));
                    break;
                case ListBlock bullets:
                    Bullets(bullets, facts, remarks);
                    break;
                case var block:
                    if (_prose.Read(block) is { } prose)
                        blocks.Add(prose);
                    break;
            }
        return new Step(written, number, name, text, messages, facts.All, remarks.ToImmutable(), blocks.ToImmutable(), source.AtOf(item));
    }

    public void Bullets(ListBlock list, FactList facts, ImmutableArray<ImmutableArray<Inline>>.Builder remarks)
    {
        foreach (var block in list)
        {
            var item = (ListItemBlock)block;
            var bullet = Bullet.Of(source.WordsOf(item));
            // read as prose too: what cannot be printed in a bullet is found there, fact or not
            var words = bullet.IsRemark || !ProseReader.IsPlain(item) ? _prose.Bullet(item) : [];
            if (!bullet.IsRemark)
                facts.Add(bullet);
            else if (!words.IsEmpty)
                remarks.Add(words);
        }
    }

    private Located<int> WrittenNumber(ListItemBlock item)
    {
        var start = item.Span.Start;
        var end = start;
        while (end < source.Content.Length && char.IsAsciiDigit(source.Content[end]))
            end++;
        var at = source.At(start, end);
        return new Located<int>(int.TryParse(at.Text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : 0, at);
    }

    private (Located<string> Name, ImmutableArray<Inline> Text) NameAndText(ListItemBlock item, Located<int> written)
    {
        if (item is not [ParagraphBlock head, ..])
        {
            findings.Add(StepFindings.NoName(written, null));
            if (item.FirstOrDefault() is { } block and not ListBlock)
                _ = _prose.Read(block);
            return (new Located<string>("", written.At), []);
        }
        if (head.Inline?.FirstChild is EmphasisInline { DelimiterCount: 2 } strong)
        {
            var name = NameOf(strong);
            if (name.Value.Length == 0)
                findings.Add(StepFindings.NoName(written, null));
            return (name, MessageReader.LeftTrimmed(_prose.Inlines.From(strong.NextSibling)));
        }
        var text = _prose.Inlines.Read(head);
        var line = source.AtOf(head).Text.Split('\n')[0].Trim();
        findings.Add(StepFindings.NoName(written, line));
        return (new Located<string>(line, written.At), text);
    }

    /// <summary>The bold words without their last stop.</summary>
    private Located<string> NameOf(EmphasisInline strong)
    {
        var words = _prose.Inlines.From(strong.FirstChild).Plain().AsSpan().Trim().TrimEnd(Stops);
        var at = source.AtOf(strong);
        var shown = at.Part(2, at.Span.Length - 2).Trimmed();
        shown = shown.Part(0, shown.Signs.TrimEnd(Stops).Length);
        return new Located<string>(words.ToString(), shown);
    }
}
