using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;
using Witnessmark.Reading.Facts;

namespace Witnessmark.Reading.Sheets;

/// <summary>Conditions as values of a sheet.</summary>
internal static partial class ConditionFields
{
    private const string StopAbove = "stop above ";

    public static Located<Condition>? Condition(this Fields fields, string key, string example) =>
        fields.Text(key, example) is { } text && ConditionReader.Read(text, fields.Findings) is { } condition ? text.As(condition) : null;

    /// <summary>One condition a line.</summary>
    public static ImmutableArray<Located<Condition>> Conditions(this Fields fields, string key) =>
        [.. fields.List(key, "[engine = stopped]").Select(text => Read(text, fields)).OfType<Located<Condition>>()];

    /// <summary>States, and happenings, that end what was proved.</summary>
    public static (ImmutableArray<Located<Condition>> When, ImmutableArray<Located<string>> After) LostWhen(this Fields fields)
    {
        var lines = fields.List("lost-when", "[engine = running]");
        var after = lines.Where(line => IsHappening(line, fields)).ToImmutableArray();
        return ([.. lines.Except(after).Select(text => Read(text, fields)).OfType<Located<Condition>>()], after);
    }

    private static Located<Condition>? Read(Located<string> text, Fields fields) =>
        ConditionReader.Read(text, fields.Findings) is { } condition ? text.As(condition) : null;

    private static bool IsHappening(Located<string> line, Fields fields)
    {
        if (line.Value == "change of people" || Becomes().IsMatch(line.Value))
            return true;
        if (!line.Value.StartsWith(StopAbove, StringComparison.Ordinal))
            return false;
        if (QuantityReader.Quantity(line.Value[StopAbove.Length..]) is { Ok: false, Fault: { } fault })
            fields.Findings.Add(QuantityFindings.Of(
                new Located<string>(line.Value[StopAbove.Length..], line.Part(new TextSpan(StopAbove.Length, line.Value.Length))),
                fault,
                $"The stop in `lost-when` of {fields.What}",
                "15 min"));
        return true;
    }

    [GeneratedRegex(@"^[\w-]+( at [\w -]+)? becomes [\w-]+$")]
    private static partial Regex Becomes();
}
