using System.Text.RegularExpressions;

namespace Witnessmark.Reading.Facts;

/// <summary>How names, places and amounts are spelled, once for all facts and conditions.</summary>
internal static partial class Spelling
{
    /// <summary><c>backing-ring-bolts</c>, <c>B1</c>, <c>{group}</c></summary>
    public const string Name = @"(?:[\p{L}\p{Nd}][\p{L}\p{Nd}_-]*|\{[\p{L}\p{Nd}][\p{L}\p{Nd}_-]*\})";

    /// <summary>Words by blanks: <c>independent mechanic</c>.</summary>
    public const string Words = Name + "(?: +" + Name + ")*";

    /// <summary><c>CL</c>, <c>each</c>, <c>every wheel-end</c>, <c>any line</c></summary>
    public const string Place = "(?:(?:every|any) +)?" + Name;

    private const string Value = "(?:(?:all|[0-9]{1,4} +of +[0-9]{1,4}) +)?" + Name;

    private const string DevicesClause = "(?<reach>every|any) +devices?(?: +that +blocks? +(?<blocks>" + Name + "))? *= *(?<value>" + Name + ")";

    private const string PeopleClause = "people +in +(?<zone>" + Name + ")";

    private const string SignOrIsNot = " +is +not +| *= *";

    private const string AtPlace = "(?: +at +(?<place>" + Place + "))?";

    private const string Thing = "(?<thing>(?:condition of +)?" + Name + ")" + AtPlace;

    /// <summary>A whole condition, without names of its pieces.</summary>
    public static string Condition => WholeCondition();

    [GeneratedRegex("^" + Name + "$")]
    public static partial Regex OneName { get; }

    [GeneratedRegex("^" + Words + "$")]
    public static partial Regex SomeWords { get; }

    /// <summary>The left side of a condition.</summary>
    [GeneratedRegex("^" + Thing + "$")]
    public static partial Regex ThingAtPlace { get; }

    /// <summary>The right side: <c>placed</c>, <c>all engaged</c>, <c>2 of 12 removed</c>.</summary>
    [GeneratedRegex("^" + Value + "$")]
    public static partial Regex StateValue { get; }

    /// <summary>What a step leaves behind may also be <c>1 more retracted</c>.</summary>
    [GeneratedRegex("^(?:(?:all|[0-9]{1,4} +of +[0-9]{1,4}|[0-9]{1,4} +more) +)?" + Name + "$")]
    public static partial Regex LeftValue { get; }

    [GeneratedRegex("^" + DevicesClause + "$")]
    public static partial Regex Devices { get; }

    [GeneratedRegex("^" + PeopleClause + "$")]
    public static partial Regex PeopleIn { get; }

    [GeneratedRegex(" +or +")]
    public static partial Regex Or { get; }

    [GeneratedRegex(SignOrIsNot)]
    public static partial Regex Sign { get; }

    /// <summary><c>backing-ring-bolts 10 of 12 at CL</c></summary>
    [GeneratedRegex("^(?<thing>" + Name + ")(?: +(?<n>[0-9]+)(?: +of +(?<of>[0-9]+))?)?" + AtPlace + "$")]
    public static partial Regex Amount { get; }

    /// <summary><c>friction-disc = 9</c>, <c>pedal-strokes &gt;= 30</c>, <c>{group} = all</c>, <c>wheel-nuts</c></summary>
    [GeneratedRegex("^(?<thing>" + Name + ")" + AtPlace + "(?:(?<least> *>= *| +(?:= +)?from +)(?<n>[0-9]+)| *= *(?:(?<all>all)|(?<n>[0-9]+)))?$")]
    public static partial Regex Counted { get; }

    /// <summary>A pattern without names of its pieces, so that it can stand in another one twice.</summary>
    public static string Unnamed(string pattern) => NameOfGroup.Replace(pattern, "(?:");

    private static string WholeCondition()
    {
        var state = $"{Thing}(?:{SignOrIsNot}){Value}(?: +or +{Value})*";
        var clause = Unnamed($"(?:safe stop|end of step|{PeopleClause}|{DevicesClause}|{Name}|{state})");
        return $@"^\s*{clause}(?:\s*,\s*{clause})*\s*$";
    }

    [GeneratedRegex("\\(\\?<[a-z]+>")]
    private static partial Regex NameOfGroup { get; }
}
