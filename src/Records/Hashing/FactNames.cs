using System.Text.RegularExpressions;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Records.Hashing;

/// <summary>Every name that the facts and messages of a procedure mention. Words to be spoken or seen are prose and name nothing.</summary>
internal static partial class FactNames
{
    public static IEnumerable<string> Of(Procedure procedure)
    {
        foreach (var part in procedure.Parts)
        {
            foreach (var name in Of(part.Facts))
                yield return name;
            foreach (var section in part.Sections)
                foreach (var name in Of(section.Facts).Concat(Of(section.Messages)).Concat(section.Steps.SelectMany(s => Of(s.Facts).Concat(Of(s.Messages)))))
                    yield return name;
        }
    }

    /// <summary>What one step names, with what its section says for all of its steps.</summary>
    public static IEnumerable<string> Of(StepInPlace place) => Of(place.Section.Facts).Concat(Of(place.Step.Facts));

    /// <summary>The words of a text that could be names.</summary>
    public static IEnumerable<string> In(string text) => Word().Matches(text).Select(m => m.Value);

    private static IEnumerable<string> Of(IEnumerable<SafetyMessage> messages) =>
        messages.Select(m => m.Hazard?.Value).OfType<string>();

    private static IEnumerable<string> Of(IEnumerable<Fact> facts) => facts.SelectMany(Of).SelectMany(t => In(t.Value));

    private static IEnumerable<Located<string>> Of(Fact fact) => fact.Value switch
    {
        Amounts v => v.All.Select(a => a.Thing),
        NameList v => v.Names,
        WrenchSetting v => [v.Wrench, v.Group, .. Maybe(v.Adapter)],
        Landing v => [v.Load, v.On],
        ConditionValue or OutcomeValue => fact.Conditions.SelectMany(c => c.All).SelectMany(Of),
        LeftState v => v.States.SelectMany(Of),
        PerformValue v => v.Arguments.Select(a => a.Value),
        Loop v => [.. v.In, .. Maybe(v.OfGroup)],
        SpokenWords v when fact.Word == FactWord.Call => [v.Text],
        _ => [],
    };

    private static IEnumerable<Located<string>> Of(Clause clause) => clause switch
    {
        StateClause c => [c.Thing],
        BundleClause c => [c.Name],
        PeopleClause c => [c.Zone],
        _ => [],
    };

    private static IEnumerable<Located<string>> Maybe(Located<string>? text) => text is { } t ? [t] : [];

    [GeneratedRegex(@"[\p{L}\p{Nd}]+(?:[-.][\p{L}\p{Nd}]+)*")]
    private static partial Regex Word();
}
