using System.Buffers;
using Witnessmark.Checking.Wording;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Steps;

/// <summary>A step has dust or dirt blown off with air.</summary>
public sealed class BlownWithAir : IProcedureRule
{
    private static readonly SearchValues<char> Ends = SearchValues.Create(".;:!?");

    public static RuleInfo Info { get; } = new("blown-with-air", "Steps", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var place in scope.Procedure.Walk())
        {
            var found = false;
            WrittenTexts.Read(place.Step, text =>
            {
                foreach (var (from, to) in Sentences(text.Text))
                {
                    // nothing blown, or it says not to
                    if (!IsBlown(text.Text.AsSpan(from, to - from), scope))
                        continue;
                    found = true;
                    Report(place, text.Text[from..to], text.Place(from, to), findings);
                }
            });
            // a sentence that begins as the name and ends in the text
            var whole = $"{place.Step.NameWithStop} {place.Step.Text.Plain()}";
            var (start, end) = Sentences(whole).FirstOrDefault();
            var opening = whole[start..end];
            if (!found && IsBlown(opening, scope))
                Report(place, opening, place.Step.Name.At, findings);
        }
    }

    private static void Report(StepInPlace place, string sentence, Location at, FindingList findings) => findings.Add(
        Info,
        at,
        $"{Say.Step(place)} has something blown with air: “{Say.Short(sentence)}”.",
        "Brake dust that is blown is breathed, by everybody around; grit is driven into seals and eyes; a bearing that is spun with air can throw its rollers.",
        "Wash it wet, wipe it, or draw it off, and write that.");

    private static bool IsBlown(ReadOnlySpan<char> sentence, Scope scope)
    {
        var (blow, air, gun, clean) = (false, false, false, false);
        foreach (var word in sentence.Words())
        {
            // "never blow", "no air gun"
            if (Words.Forbidding.Has(word, scope) || Words.Denying.Has(word, scope))
                return false;
            blow |= Words.Blowing.Has(word, scope);
            air |= Words.Air.Has(word, scope);
            gun |= Words.AirTools.Has(word, scope);
            clean |= Words.Cleaning.Has(word, scope);
        }
        // a light blow with the hammer is none, and neither is a part left to dry in the air
        return clean && (blow || (air && gun));
    }

    private static IEnumerable<(int Start, int End)> Sentences(string text)
    {
        var start = 0;
        while (start < text.Length)
        {
            var length = text.AsSpan(start).IndexOfAny(Ends);
            var end = length < 0 ? text.Length : start + length;
            var first = start;
            while (first < end && char.IsWhiteSpace(text[first]))
                first++;
            if (first < end)
                yield return (first, end);
            start = end + 1;
        }
    }
}
