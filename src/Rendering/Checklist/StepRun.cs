using System.Collections.Immutable;
using Scriban.Runtime;
using Witnessmark.Language.Model;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Checklist;

/// <summary>
/// The steps of a section one after another. A message and what it holds for, down to the end of its section, stand in one
/// block: where the block goes on to another page, the page begins with the message.
/// </summary>
internal sealed class StepRun
{
    private readonly SheetContext _context;
    private readonly ImmutableArray<string> _usualDoers;
    private readonly ImmutableArray<SheetStep> _steps;

    private readonly ScriptObject _close;

    private StepRun(SheetSection section, ScriptObject close, SheetContext context)
    {
        (_context, _usualDoers, _close) = (context, context.UsualDoers(section), close);
        _steps = [.. section.Steps.SelectMany(s => s.Performed.Prepend(s))];
    }

    /// <param name="close">What closes the section: it stays on the page of the last step, and so stands in that step's block.</param>
    public static ScriptArray Of(SheetSection section, ScriptObject close, SheetContext context)
    {
        var run = new StepRun(section, close, context);
        return new ScriptArray(run.Between(0, run._steps.Length, 0));
    }

    /// <param name="said">How many messages of the first step stand already above it.</param>
    private IEnumerable<ScriptObject> Between(int from, int until, int said)
    {
        var open = until == _steps.Length;
        for (var i = from; i < until; said = 0)
        {
            var begin = Begin(i);
            if (said < begin.Length)
            {
                var end = Math.Min(EndOfReach(i), until);
                yield return Reach(begin[said], _steps[i].Fills, Between(i, end, said + 1));
                open &= end < _steps.Length;
                i = end;
            }
            else
                yield return StepRow.Of(_steps[i++], _usualDoers, _context);
        }
        if (open)
            yield return _close;
    }

    /// <summary>Messages that begin to hold at a step. A common part has sections of its own.</summary>
    private ImmutableArray<SafetyMessage> Begin(int step)
    {
        var section = _steps[step].Place.Section;
        var first = step == 0 || !_steps[..step].Any(s => IsSameSection(s, _steps[step]));
        return first ? [.. section.Messages, .. _steps[step].Step.Messages] : _steps[step].Step.Messages;
    }

    /// <summary>
    /// To the end of its section; further where a message in between holds longer: a section of a common part may be broken by
    /// what it performs, and go on behind it. Said once too often is better than not said.
    /// </summary>
    private int EndOfReach(int step)
    {
        var end = EndOfSection(step);
        for (var i = step; i < end; i++)
            if (!Begin(i).IsEmpty)
                end = Math.Max(end, EndOfSection(i));
        return end;
    }

    private int EndOfSection(int step)
    {
        var section = _steps[step].Place.Section;
        return ReferenceEquals(section, _steps[0].Place.Section) ? _steps.Length : Enumerable.Range(0, _steps.Length).Last(i => IsSameSection(_steps[i], _steps[step])) + 1;
    }

    // performed a second time, a common part is another piece of work: what it warns of does not hold in between
    private static bool IsSameSection(SheetStep a, SheetStep b) => ReferenceEquals(a.Place.Section, b.Place.Section) && ReferenceEquals(a.Within, b.Within);

    private ScriptObject Reach(SafetyMessage message, Fills fills, IEnumerable<ScriptObject> held) => new ScriptObject
    {
        ["message"] = MessageBox.Of(message, fills, _context),
        ["held"] = new ScriptArray(held),
    }.Showing("sheet-reach.html");
}
