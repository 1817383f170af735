using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;
using Witnessmark.Reading.Facts;
using Witnessmark.Reading.Shapes;

namespace Witnessmark.Reading.Sheets;

/// <summary>Conditions as values of a sheet.</summary>
internal static class ConditionFields
{
    public static readonly SpelledForm Form = new("condition", () => Spelling.Condition);

    private static readonly SpelledForm Loss = new("end of a proof", () => $"{Spelling.Condition}|^{HappeningReader.OnePattern}$");

    public static readonly Row LostWhenRow = Row.List("lost-when", "[engine = running]", "states and happenings that end what was proved", Loss);

    public static Located<Condition>? Condition(this Fields fields, string key) => fields.Text(key) is { } text ? Read(text, fields) : null;

    /// <summary>One condition a line.</summary>
    public static ImmutableArray<Located<Condition>> Conditions(this Fields fields, string key) =>
        [.. fields.List(key).Select(text => Read(text, fields)).OfType<Located<Condition>>()];

    /// <summary>States, and happenings, that end what was proved.</summary>
    public static (ImmutableArray<Located<Condition>> When, ImmutableArray<Happening> After) LostWhen(this Fields fields)
    {
        var when = ImmutableArray.CreateBuilder<Located<Condition>>();
        var after = ImmutableArray.CreateBuilder<Happening>();
        foreach (var line in fields.List(LostWhenRow.Key))
            if (HappeningReader.One(line, fields.Findings) is { } happening)
                after.Add(happening);
            else if (!HappeningReader.IsRest(line) && Read(line, fields) is { } condition)
                when.Add(condition);
        return (when.ToImmutable(), after.ToImmutable());
    }

    private static Located<Condition>? Read(Located<string> text, Fields fields) =>
        ConditionReader.Read(text, fields.Findings) is { } condition ? text.As(condition) : null;
}
