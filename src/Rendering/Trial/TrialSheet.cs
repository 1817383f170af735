using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Records.Issuing;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Checklist;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Trial;

/// <summary>The true sheet and the ten places where it can be made wrong, found in its own plan: a changed procedure moves them along.</summary>
internal sealed partial class TrialSheet(SheetContext context, string html)
{
    private readonly ImmutableArray<SheetStep> _steps = [.. context.Plan.Steps];

    /// <summary>Every error that this sheet has a place for, one a step; only a tightening can have both its unit and its dial wrong.</summary>
    public ImmutableArray<PlantedError> Errors()
    {
        var taken = new HashSet<string>(StringComparer.Ordinal);
        var errors = ImmutableArray.CreateBuilder<PlantedError>();
        foreach (var find in new Func<SheetStep, PlantedError?>[] { Facing, Unit, Limit, Device, Count, Swapped, Box })
            if (_steps.Where(s => !taken.Contains(s.Code.Plain)).Select(find).FirstOrDefault(IsThere) is { } error)
            {
                errors.Add(error);
                taken.UnionWith(error.Where.Split(' '));
            }
        return [.. errors, .. _steps.Select(Torque).Where(IsThere).OfType<PlantedError>().Take(1), .. Message(), .. OtherCopy()];
    }

    // what a step asks for may be printed in another way than in the demo: then the next one has the error
    private bool IsThere(PlantedError? error) => error is not null && error.Edits.All(e => e.IsIn(html));

    private PlantedError? Count(SheetStep step)
    {
        var ask = step.Asks.OfType<CountAsk>().FirstOrDefault(a => a is { Expected: > 1, AtLeast: false });
        return ask is null ? null : In(step, ErrorKind.WrongCount, $"{context.Words.OutOf} {ask.Expected}</span>", $"{context.Words.OutOf} {ask.Expected - 1}</span>");
    }

    private PlantedError? Unit(SheetStep step) =>
        step.Asks.OfType<PassAsk>().FirstOrDefault()?.Group.Torque is { } torque && OtherScale(torque.Value.Target.Unit.Symbol) is { } other
            ? In(step, ErrorKind.WrongUnit, Native(torque.Value.ToString()), Native(torque.Value.ToString().Replace(torque.Value.Target.Unit.Symbol, other, StringComparison.Ordinal)))
            : null;

    private static string? OtherScale(string unit) => unit switch
    {
        "N·m" => "lbf·ft",
        "lbf·ft" => "N·m",
        _ => null,
    };

    private static PlantedError? Torque(SheetStep step) =>
        step.Asks.OfType<PassAsk>().FirstOrDefault() is { Settings: [_, var second, ..] }
            ? In(step, ErrorKind.WrongTorque, Native(second.Dial.ToString()), Native(Swap(second.Dial.ToString())))
            : null;

    private PlantedError? Limit(SheetStep step)
    {
        if (step.Asks.OfType<ReadingAsk>().Select(a => a.Accept).OfType<QuantityRange>().FirstOrDefault(a => a is { High: not null, Low: not null }) is not { High: { } limit } accept)
            return null;
        var (was, high) = (context.Quantities.Text(accept), limit.Value.NumberText);
        return In(step, ErrorKind.ChangedLimit, Native(was), Native(was.Replace(high, Swap(high), StringComparison.Ordinal)));
    }

    private PlantedError? Facing(SheetStep step)
    {
        var stack = step.Asks.OfType<StackAsk>().FirstOrDefault(s => s.Cells.Any(c => c.FacedTo is not null));
        if (stack is null)
            return null;
        var (from, to) = (context.StackEnd(stack.Stack, stack.Stack.From?.Value), context.StackEnd(stack.Stack, stack.Stack.To?.Value));
        return In(step, ErrorKind.FacingTurned, $"{context.Words.FacingTo}<br>{from}", $"{context.Words.FacingTo}<br>{to}");
    }

    private PlantedError? Device(SheetStep step)
    {
        var named = step.Step.Facts.Where(f => f.Word is FactWord.Place or FactWord.Recover).Select(f => f.Value).OfType<Amounts>().SelectMany(a => a.All).LastOrDefault();
        var kind = named is null ? null : context.Scope.Device(named.Thing.Value);
        var other = context.Scope.Machine?.Devices.LastOrDefault(d => kind is not null && d.Id.Value != kind.Id.Value && d.Tags.Length > 0);
        return kind is null || other is null || kind.Id.Value == named!.Thing.Value ? null : In(step, ErrorKind.WrongDeviceTag, Cell(named.Thing.Value), Cell(other.Tags[^1].Value));
    }

    private PlantedError? Box(SheetStep step) =>
        step.Asks.OfType<ToolAsk>().Any()
            ? new PlantedError(ErrorKind.BoxMissing, step.Code.Plain, context.Words.Tool, "", [new TrialEdit(Id(step), "<span class=\"box tool \"></span>", "")])
            : null;

    // words exchanged, numbers not: the sheet still counts 12, 13
    private PlantedError? Swapped(SheetStep step)
    {
        var at = _steps.IndexOf(step);
        if (at + 1 >= _steps.Length || !IsPlain(step) || !IsPlain(_steps[at + 1]) || _steps[at + 1].Place.Section != step.Place.Section)
            return null;
        var (first, second) = (Words(step), Words(_steps[at + 1]));
        return new PlantedError(ErrorKind.StepsSwapped, $"{step.Code.Plain} {_steps[at + 1].Code.Plain}", $"{step.Step.Name.Value}, {_steps[at + 1].Step.Name.Value}", $"{_steps[at + 1].Step.Name.Value}, {step.Step.Name.Value}",
            [new TrialEdit(Id(step), first, second), new TrialEdit(Id(_steps[at + 1]), second, first)]);
    }

    private static bool IsPlain(SheetStep step) => step.Performed.IsEmpty && step.Step.Messages.IsEmpty && step.Asks.All(a => a is CountAsk or ChoiceAsk { Ends: true });

    private IEnumerable<PlantedError> Message()
    {
        var message = MessageBlock().Match(html);
        if (message.Success)
            yield return new PlantedError(ErrorKind.MessageMissing, _steps.FirstOrDefault(s => !s.Step.Messages.IsEmpty)?.Code.Plain ?? "", Plain(message.Value), "", [new TrialEdit("", message.Value, "")]);
    }

    private IEnumerable<PlantedError> OtherCopy()
    {
        if (context is { Plan.Sections: [_, .., var last], Identity.SetMark: { } mark })
            yield return new PlantedError(ErrorKind.PageOfAnotherCopy, last.Section.Heading?.Value ?? "", mark, TrialMark.Stray(mark), [], TrialMark.Stray(mark));
    }

    private static PlantedError In(SheetStep step, ErrorKind kind, string from, string to) =>
        new(kind, step.Code.Plain, Plain(from), Plain(to), [new TrialEdit(Id(step), from, to)]);

    private string Words(SheetStep step)
    {
        const string Start = "<div class=\"words\">";
        var from = html.IndexOf(Start, html.IndexOf($"id=\"{Id(step)}\"", StringComparison.Ordinal), StringComparison.Ordinal);
        return html[from..(html.IndexOf("</div>", from, StringComparison.Ordinal) + "</div>".Length)];
    }

    private static string Id(SheetStep step) => "step-" + step.Code.Plain.Replace('.', '-');

    private static string Native(string text) => $"<span class=\"native\">{Escape.Text(text)}</span>";

    private static string Cell(string text) => $"<span class=\"cell\">{Escape.Text(text)}</span>";

    /// <summary>The last two digits that differ change places: 5.08 is 5.80, 140 is 104; a number of one digit gets one more.</summary>
    internal static string Swap(string number)
    {
        var digits = Enumerable.Range(0, number.Length).Where(i => char.IsAsciiDigit(number[i])).ToList();
        var pair = digits.Zip(digits.Skip(1)).LastOrDefault(p => number[p.First] != number[p.Second]);
        if (pair == default)
            return number.Insert(digits[^1] + 1, "0");
        var signs = number.ToCharArray();
        (signs[pair.First], signs[pair.Second]) = (signs[pair.Second], signs[pair.First]);
        return new string(signs);
    }

    private static string Plain(string markup) => Blanks().Replace(System.Net.WebUtility.HtmlDecode(Tag().Replace(markup, " ")), " ").Trim();

    [GeneratedRegex("<div class=\"message [^>]*>.*?</div>\\s*</div>", RegexOptions.Singleline)]
    private static partial Regex MessageBlock();

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tag();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();
}
