using System.Collections.Immutable;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking;

/// <summary>What keeps people whole on a sheet, in both languages: messages, and what is called and answered.</summary>
/// <param name="Original">As the procedure has it.</param>
/// <param name="Own">As the translated sheet prints it.</param>
public sealed record SafetyWords(ImmutableArray<Passage> Original, ImmutableArray<Passage> Own)
{
    /// <summary>Null for data, and for a procedure that has none.</summary>
    public static SafetyWords? Of(TranslatedFile file)
    {
        if (file.Procedure is not { } procedure)
            return null;
        var scope = file.Library.ScopeOf(procedure);
        var tongue = SheetTranslations.Of(scope, file.Translation.Language.Value).Tongue;
        var words = new SafetyWords(
            [.. file.Pairs.SelectMany(p => p.Original[..^1]), .. procedure.Steps.Select(s => Spoken(s, s, scope, Tongue.AsWritten))],
            [.. file.Pairs.SelectMany(p => p.Own[..^1]), .. procedure.Steps.Select(s => Spoken(s, file.Translation.Body?.Step(s.Number), scope, tongue))]);
        return words.Original.All(p => p.Texts.IsEmpty) ? null : words;
    }

    /// <summary>Four digits that follow from the words of both: of what was compared, as whoever compared it has written it down.</summary>
    public string Mark => Passage.MarkOf(Original.Concat(Own));

    // a call that has a name is translated once, in the workshop's file
    private static Passage Spoken(Step step, Step? own, Scope scope, Tongue tongue)
    {
        if (step.Find(FactWord.Call) is { } call && scope.Call(call.Text.Value) is { } named)
            return new Passage("a call", [tongue.Text(named.Call), tongue.Text(named.Answer)], step.Name.At);
        var said = new[] { FactWord.Call, FactWord.Answer }.Select(w => own?.Find(w)?.Text.Value).OfType<string>();
        return new Passage("a call", [.. said], step.Name.At);
    }
}
