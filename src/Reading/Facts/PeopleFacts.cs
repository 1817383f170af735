using System.Text.RegularExpressions;
using Witnessmark.Language.Model;

namespace Witnessmark.Reading.Facts;

/// <summary>call answer hold checked-by hand-over</summary>
internal static partial class PeopleFacts
{
    public static FactValue? Spoken(FactText fact) => new SpokenWords(fact.Text);

    public static FactValue? Checker(FactText fact)
    {
        var match = RoleAndMode.Match(fact.Text.Value);
        if (!match.Success)
            return fact.Unclear();
        var mode = match.Groups["mode"].Value == "independent" ? CheckMode.Independent : CheckMode.Concurrent;
        return new Checker(fact.Text.Piece(match.Groups["role"]), mode);
    }

    public static FactValue? HandOver(FactText fact)
    {
        if (fact.Text.Split(To) is not [var from, var to])
            return fact.Unclear();
        var givers = from.AtCommas();
        var takers = to.AtCommas();
        foreach (var role in givers.Concat(takers))
            if (!Spelling.SomeWords.IsMatch(role.Value))
                return fact.Unclear(role);
        return new HandOverValue(givers, takers);
    }

    [GeneratedRegex("^(?<role>" + Spelling.Words + ") *\\((?<mode>independent|concurrent)\\)$")]
    private static partial Regex RoleAndMode { get; }

    [GeneratedRegex(" +to +")]
    private static partial Regex To { get; }
}
