using System.Collections.Immutable;
using Markdig.Syntax;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Facts;
using Inline = Witnessmark.Language.Model.Inline;
using MdBlock = Markdig.Syntax.Block;

namespace Witnessmark.Reading.Steps;

/// <summary>Reads headings, facts, messages and steps from the top of the text to its end.</summary>
internal sealed class BodyReader
{
    private const string PartMark = "Part:";

    private readonly SourceText _source;
    private readonly FindingList _findings;
    private readonly TextKind _kind;
    private readonly BodyDraft _draft;
    private readonly ProseReader _prose;
    private readonly StepReader _steps;
    private readonly MessageReader _messages;
    private readonly List<SafetyMessage> _waiting = [];
    private MdBlock? _before;

    private BodyReader(SourceText source, TextKind kind, FindingList findings)
    {
        _kind = kind;
        _source = source;
        _findings = findings;
        _draft = new BodyDraft(kind, findings);
        _prose = new ProseReader(source, findings);
        _steps = new StepReader(source, kind, findings);
        _messages = new MessageReader(source, kind, findings);
    }

    public static Body Read(MarkdownDocument text, SourceText source, int start, TextKind kind, FindingList findings)
    {
        var reader = new BodyReader(source, kind, findings);
        foreach (var block in text)
        {
            reader.Take(block);
            if (block is not LinkReferenceDefinitionGroup)
                reader._before = block;
        }
        reader.NothingWaits();
        var heading = reader._draft.Title?.At ?? source.At(start, start);
        if (reader._draft.StepCount == 0)
            findings.Add(TextFindings.NoStep(heading));
        else
            findings.AddRange(reader._draft.Empty.Select(TextFindings.PartWithoutStep));
        reader.ContractOfNothing();
        return reader._draft.Finish();
    }

    private void Take(MdBlock block)
    {
        switch (block)
        {
            case HeadingBlock heading:
                Heading(heading);
                break;
            case QuoteBlock quote:
                if (_messages.Read(quote) is { } message)
                    _waiting.Add(message);
                break;
            case ListBlock { IsOrdered: true } steps:
                foreach (var item in steps.OfType<ListItemBlock>())
                    Step(item);
                break;
            case ListBlock bullets:
                Bullets(bullets);
                break;
            default:
                Prose(block);
                break;
        }
    }

    private void Heading(HeadingBlock heading)
    {
        var at = _source.AtOf(heading);
        var words = _prose.Inlines.Read(heading);
        var name = new Located<string>(words.Plain().Trim(), words.IsEmpty ? at : _source.At(words[0].At.Span.Start, words[^1].At.Span.End));
        if (heading.Level > 2)
            _findings.Add(TextFindings.HeadingTooDeep(at, heading.Level));
        else if (heading.Level == 2)
            Section(name);
        else if (name.Value.StartsWith(PartMark, StringComparison.Ordinal))
            Part(name);
        else if (_draft.Title is not null)
            _findings.Add(TextFindings.SecondTitle(at));
        else
            _draft.Title = name;
    }

    private void Section(Located<string> name)
    {
        if (_draft.Title is null && _draft.Parts.Count == 1)
            _findings.Add(TextFindings.NoTitleYet(name.At));
        _draft.Part.Sections.Add(new SectionDraft(name, [.. _waiting], _kind, _findings));
        _waiting.Clear();
    }

    private void Part(Located<string> heading)
    {
        NothingWaits();
        var written = new Located<string>(heading.At.Text, heading.At);
        var name = (written.Value.StartsWith(PartMark, StringComparison.Ordinal) ? written.Piece(PartMark.Length, written.Value.Length) : heading).Trimmed();
        if (!Spelling.OneName.IsMatch(name.Value))
            _findings.Add(TextFindings.PartName(heading.At, name.Value));
        else if (_draft.Parts.FirstOrDefault(p => p.IsCalled(name.Value))?.Name is { } first)
            _findings.Add(TextFindings.PartTwice(name.At, first.At, name.Value));
        _draft.Parts.Add(new PartDraft(name, _kind, _findings));
    }

    private void NothingWaits()
    {
        foreach (var message in _waiting)
            _findings.Add(MessageFindings.ForNothing(message.At));
        _waiting.Clear();
    }

    /// <summary>The title's own contract and loops hold for the steps under it; what may also stand in a step holds for all parts below.</summary>
    private void ContractOfNothing()
    {
        if (_kind.IsTranslation || _draft.Parts.Count == 1 || _draft.Untitled.Sections.Count > 0)
            return;
        foreach (var fact in _draft.Untitled.Facts.All.Where(f => !BodyDraft.HoldsBelow(f)))
            _findings.Add(FactFindings.NoStepUnderTitle(fact));
    }

    private void Step(ListItemBlock item)
    {
        if (_draft.Section is null)
            _draft.Part.Sections.Add(new SectionDraft(null, [], _kind, _findings));
        var step = _steps.Read(item, ++_draft.StepCount, [.. _waiting]);
        _waiting.Clear();
        _draft.Section!.Steps.Add(step);
        var number = Math.Max(step.Number, step.WrittenNumber.Value);
        if (number > StepFindings.Most && !_draft.HasTooMany)
            _findings.Add(StepFindings.TooMany(step.WrittenNumber.At, number));
        _draft.HasTooMany |= number > StepFindings.Most;
    }

    private void Bullets(ListBlock list)
    {
        if (_draft.HasSteps && _before is ListBlock)
            Slipped(list);
        else if (LooksLikeFacts(list) is not { } facts)
            Prose(list);
        else if (_draft.HasSteps || (_draft.Title is null && _draft.Parts.Count == 1))
            _findings.Add(FactFindings.Nowhere(_source.AtOf(list)));
        else
            UnderHeading(list, facts);
    }

    private void UnderHeading(ListBlock list, IEnumerable<Bullet> bullets)
    {
        foreach (var item in list.OfType<ListItemBlock>())
            _prose.Bullet(item);
        foreach (var bullet in bullets)
            if (bullet.IsRemark)
                _findings.Add(FactFindings.Remark(bullet));
            else
                (_draft.Section?.Facts ?? _draft.Part.Facts).Add(bullet);
    }

    /// <summary>Facts that have slipped out of the step before count for it all the same: the cause is reported once.</summary>
    private void Slipped(ListBlock list)
    {
        var steps = _draft.Section!.Steps;
        var step = steps[^1];
        _findings.Add(StepFindings.Slipped(_source.AtOf(list), list.Count, step.Number, list.Column));
        var facts = new FactList(_kind.Step, _findings);
        var remarks = ImmutableArray.CreateBuilder<ImmutableArray<Inline>>();
        _steps.Bullets(list, facts, remarks);
        steps[^1] = step with { Facts = step.Facts.AddRange(facts.All), Remarks = step.Remarks.AddRange(remarks) };
    }

    /// <summary>The bullets, when they are meant as facts: one has a word of the table, or all have nearly one.</summary>
    private ImmutableArray<Bullet>? LooksLikeFacts(ListBlock list)
    {
        var bullets = list.OfType<ListItemBlock>()
            .Select(item => Bullet.Of(_source.WordsOf(item)))
            .ToImmutableArray();
        return bullets.Any(b => b.Row is not null) || bullets.All(b => b.NearestFact is not null) ? bullets : null;
    }

    private void Prose(MdBlock block)
    {
        if (_prose.Read(block) is not { } prose)
            return;
        if (_draft.HasSteps)
            _findings.Add(TextFindings.BetweenSteps(prose.At, _draft.StepCount));
        else
            (_draft.Section?.Prose ?? _draft.Part.Prose).Add(prose);
    }
}
