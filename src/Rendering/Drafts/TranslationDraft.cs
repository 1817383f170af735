using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Rendering.Drafts;

/// <summary>
/// A translation to be written over its original: the text of the procedure line by line, without its facts, with the mark
/// of the words under every heading and step, and signal words in the other language.
/// </summary>
public sealed class TranslationDraft
{
    private readonly Procedure _procedure;
    private readonly Scope _scope;
    private readonly string _language;
    private readonly Dictionary<int, string> _marks = [];
    private readonly Dictionary<int, (string From, string To)> _signals = [];
    private readonly HashSet<int> _dropped = [];

    private TranslationDraft(Scope scope, string language)
    {
        (_scope, _procedure, _language) = (scope, scope.Procedure, language);
        if (_procedure.Heading is { } heading)
            _marks[Line(heading.At)] = Mark([Passages.Title(_procedure.Title, _procedure.Heading, _procedure.Introduction, heading.At)], "");
        foreach (var part in _procedure.Parts)
            Part(part);
    }

    /// <param name="translator">Initials, or null.</param>
    public static string Of(Scope scope, string language, string? translator)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"---\ntranslates: {YamlScalar.Of(scope.Procedure.Id.Value)}\nlanguage: {language}\n");
        if (scope.Procedure.Title is { } title)
            text.Append(CultureInfo.InvariantCulture, $"title: {YamlScalar.Of(title.Value)}\n");
        if (translator is not null)
            text.Append(CultureInfo.InvariantCulture, $"translators: [{YamlScalar.Of(translator)}]\n");
        text.Append("---\n\n");
        foreach (var line in new TranslationDraft(scope, language).Body())
            text.Append(line).Append('\n');
        return text.ToString();
    }

    private void Part(ProcedurePart part)
    {
        Drop(part.Facts);
        if (part.Name is { } name && !part.Prose.IsEmpty)
            _marks[Line(name.At)] = Mark([Passages.Part(part, name.At)], "");
        foreach (var section in part.Sections)
        {
            Drop(section.Facts);
            Messages(section.Messages);
            if (section.Heading is { } heading)
                _marks[Line(heading.At)] = Mark(Passages.WithMessages(section, heading.At), "");
            foreach (var step in section.Steps)
            {
                Drop([.. step.Facts.Where(f => !IsSaid(f))]);
                Messages(step.Messages);
                _marks[Line(step.Name.At)] = Mark(Passages.WithMessages(step), "    ");
            }
        }
    }

    private void Messages(ImmutableArray<SafetyMessage> messages)
    {
        foreach (var message in messages)
        {
            if (message.Signal is { } signal)
                _signals[Line(message.Word.At)] = (message.Word.Value, SheetLanguages.Signal(signal, _language));
            if (message.Hazard is { } hazard)
                _dropped.Add(Line(hazard.At));
        }
    }

    private void Drop(ImmutableArray<Fact> facts)
    {
        foreach (var fact in facts)
            for (var line = Line(fact.At); line <= _procedure.Source.PositionOf(Math.Max(fact.At.Span.Start, fact.At.Span.End - 1)).Line; line++)
                _dropped.Add(line);
    }

    // a call that has a name is translated once, in the workshop's file
    private bool IsSaid(Fact fact) =>
        fact.Word is FactWord.Answer or FactWord.Hold || (fact.Word == FactWord.Call && _scope.Call(fact.Text.Value) is null);

    private IEnumerable<string> Body()
    {
        string? waiting = null;
        var blank = true;
        for (var n = FirstLine(); n <= _procedure.Source.LineCount; n++)
        {
            var line = _procedure.Source.Line(n).TrimEnd();
            if (waiting is not null && EndsParagraph(n, line))
            {
                yield return waiting;
                (waiting, blank) = (null, false);
            }
            if (_dropped.Contains(n) || (line.Length == 0 && (blank || n == _procedure.Source.LineCount)))
                continue;
            yield return _signals.TryGetValue(n, out var signal) ? Changed(line, signal) : line;
            blank = line.Length == 0;
            if (!_marks.TryGetValue(n, out var mark))
                continue;
            // in a step behind its first paragraph, before what is said; under a heading by itself
            if (!line.StartsWith('#'))
                waiting = mark;
            else
                foreach (var own in new[] { "", mark, "" })
                    yield return own;
            blank = waiting is null;
        }
        if (waiting is not null)
            yield return waiting;
    }

    private bool EndsParagraph(int number, string line) =>
        _dropped.Contains(number) || line.Length == 0 || line.TrimStart().StartsWith("- ", StringComparison.Ordinal);

    /// <summary>Behind the line that closes the front matter.</summary>
    private int FirstLine()
    {
        var line = 2;
        while (line <= _procedure.Source.LineCount && _procedure.Source.Line(line).TrimEnd() != "---")
            line++;
        return line + 1;
    }

    private static string Changed(string line, (string From, string To) signal)
    {
        var at = line.IndexOf(signal.From, StringComparison.Ordinal);
        return at < 0 ? line : string.Concat(line.AsSpan(0, at), signal.To, line.AsSpan(at + signal.From.Length));
    }

    private static string Mark(IEnumerable<Passage> passages, string indent) => $"{indent}- original: {Passage.MarkOf(passages)}";

    private static int Line(Location at) => at.Start.Line;
}
