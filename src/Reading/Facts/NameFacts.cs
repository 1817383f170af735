using System.Text.RegularExpressions;
using Witnessmark.Language.Model;
using Name = Witnessmark.Language.Model.StepName;

namespace Witnessmark.Reading.Facts;

/// <summary>by tools zone drain fill measure inspect test work-out lift land decide tool checks was</summary>
internal static partial class NameFacts
{
    public static FactValue? One(FactText fact) =>
        Spelling.OneName.IsMatch(fact.Text.Value) ? new NameList([fact.Text]) : fact.Unclear();

    public static FactValue? List(FactText fact) => Names(fact, Spelling.OneName);

    /// <summary>Names of several words, as roles have: <c>independent mechanic</c>.</summary>
    public static FactValue? WordList(FactText fact) => Names(fact, Spelling.SomeWords);

    /// <summary>A step is named by its slug; its words as printed are close enough to say what was meant.</summary>
    public static FactValue? StepName(FactText fact) =>
        Spelling.OneName.IsMatch(fact.Text.Value)
            ? new NameList([fact.Text])
            : fact.Unclear(putRight: $"A step is named in lower case with hyphens: `{fact.Row.Spelling}: {Name.Slug(fact.Text.Value)}`.");

    public static FactValue? WorkOut(FactText fact)
    {
        var setting = Setting.Match(fact.Text.Value);
        if (!setting.Success)
            return List(fact);
        return new WrenchSetting(
            fact.Text.Piece(setting.Groups["wrench"]),
            fact.Text.Piece(setting.Groups["group"]),
            fact.Text.PieceOrNull(setting.Groups["adapter"]));
    }

    public static FactValue? Landing(FactText fact) =>
        LoadOn.Match(fact.Text.Value) is { Success: true } match
            ? new Landing(fact.Text.Piece(match.Groups["load"]), fact.Text.Piece(match.Groups["on"]))
            : fact.Unclear();

    private static FactValue? Names(FactText fact, Regex shape)
    {
        var names = fact.Text.AtCommas();
        foreach (var name in names)
            if (!shape.IsMatch(name.Value))
                return fact.Unclear(name);
        return new NameList(names);
    }

    [GeneratedRegex("^setting +of +(?<wrench>" + Spelling.Name + ") +for +(?<group>" + Spelling.Name + ")(?: +with +(?<adapter>" + Spelling.Name + "))?$")]
    private static partial Regex Setting { get; }

    [GeneratedRegex("^(?<load>" + Spelling.Name + ") +on +(?<on>.+)$")]
    private static partial Regex LoadOn { get; }
}
