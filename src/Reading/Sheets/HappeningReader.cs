using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Reading.Facts;
using Witnessmark.Reading.Faults;
using Witnessmark.Reading.Shapes;

namespace Witnessmark.Reading.Sheets;

/// <summary>Reads what a rule waits for, and which steps it speaks of.</summary>
internal static partial class HappeningReader
{
    private const string ChangeOfPeople = "change of people";
    private const string StopAbove = "stop above ";

    private const string ThingBecomes = "(?<thing>" + Spelling.Name + ")(?: +at +(?<place>" + Spelling.Place + "))? +becomes +(?<value>" + Spelling.Name + ")";
    private const string TestPattern = "test +(?<test>" + Spelling.Name + ")";
    private const string ThatChanges = "step +that +changes +(?<thing>" + Spelling.Name + ")";

    private static readonly ImmutableDictionary<string, FactWord> Verbs = ImmutableDictionary.CreateRange(StringComparer.Ordinal, new KeyValuePair<string, FactWord>[]
    {
        new("lifts", FactWord.Lift), new("lands", FactWord.Land), new("drains", FactWord.Drain), new("fills", FactWord.Fill), new("removes", FactWord.Remove), new("fits", FactWord.Fit),
        new("loosens", FactWord.Loosen), new("snugs", FactWord.Snug), new("tightens", FactWord.Tighten), new("places", FactWord.Place), new("recovers", FactWord.Recover),
        new("measures", FactWord.Measure), new("inspects", FactWord.Inspect), new("tests", FactWord.Test),
    });

    public static readonly SpelledForm Form = new("happenings", () => AtCommas(OnePattern));

    public static readonly SpelledForm StepsForm = new(
        "kind of step",
        () => Spelling.Unnamed($"^(?:step +where +{ThingBecomes}|{ThatChanges}|step +that +{AnyVerb}(?: +or +{AnyVerb})*)$"));

    public static readonly SpelledForm HadForm = new(
        "what a step has",
        () => AtCommas($"(?:crew +[0-9]+|(?:{string.Join('|', FactWords.All.Where(f => f.Place.HasFlag(FactPlace.Step)).Select(f => f.Spelling))})(?: [^,]*)?)"));

    /// <summary>One happening as a pattern.</summary>
    public static string OnePattern => Spelling.Unnamed($"(?:{ChangeOfPeople}|{ThingBecomes}|{TestPattern}|{StopAbove}(?:{AnyQuantity}))");

    private static string AnyQuantity => string.Join('|', QuantityPatterns.Kinds.Select(kind => QuantityPatterns.Quantity(kind)[1..^1]));

    private static string AnyVerb => $"(?:{string.Join('|', Verbs.Keys.Order(StringComparer.Ordinal))})";

    /// <summary>Happenings by comma; what is none is found.</summary>
    public static ImmutableArray<Happening> All(Located<string>? text, FindingList findings) =>
        text is { } written ? [.. written.AtCommas().Select(t => One(t, findings) ?? Unclear(t, findings)).OfType<Happening>()] : [];

    /// <summary>Null when it is a condition and no happening.</summary>
    public static Happening? One(Located<string> text, FindingList findings) =>
        text.Value == ChangeOfPeople ? new PeopleChanging(text.At)
        : IsRest(text) ? Rest(text, findings)
        : Becomes.Match(text.Value) is { Success: true } match ? Becoming(text, match)
        : Test.Match(text.Value) is { Success: true } test ? new Testing(text.Piece(test.Groups["test"]), text.At)
        : null;

    /// <summary>Whether it begins as a rest does, readable or not.</summary>
    public static bool IsRest(Located<string> text) => text.Value.StartsWith(StopAbove, StringComparison.Ordinal);

    public static StepsMeant? Steps(Located<string>? every, FindingList findings)
    {
        if (every is not { } text)
            return null;
        if (StepWhere.Match(text.Value) is { Success: true } where)
            return new StepsWhere(Becoming(text, where));
        if (StepThatChanges.Match(text.Value) is { Success: true } changes)
            return new StepsThatChange(text.Piece(changes.Groups["thing"]), text.At);
        if (StepThat.Match(text.Value) is { Success: true } that && that.Groups["verb"].Captures.Select(c => c.Value).ToList() is var verbs && verbs.TrueForAll(Verbs.ContainsKey))
            return new StepsThat([.. verbs.Select(v => Verbs[v])], text.At);
        findings.Add(
            StepFaults.ConditionUnclear,
            text.At,
            $"`{Say.Short(text.Value)}` does not say which steps are meant.",
            "A rule about steps that nobody can name is never asked, and protects nobody.",
            "Write `step where engine becomes running`, `step that changes lock-pins`, or `step that lifts or lands`.");
        return null;
    }

    public static ImmutableArray<Had> Has(Located<string>? has, FindingList findings) =>
        has is { } text ? [.. text.AtCommas().Select(t => One(t) ?? NotHad(t, findings)).OfType<Had>()] : [];

    private static string AtCommas(string one) => $@"^\s*{one}(?:\s*,\s*{one})*\s*$";

    private static Had? One(Located<string> text)
    {
        var blank = text.Value.IndexOf(' ', StringComparison.Ordinal);
        var (word, thing) = blank < 0 ? (text.Value, (Located<string>?)null) : (text.Value[..blank], text.Piece(blank, text.Value.Length).Trimmed());
        if (word == "crew" && thing is { } number && int.TryParse(number.Value, NumberStyles.None, CultureInfo.InvariantCulture, out var people))
            return new Had(null, null, people, text.At);
        return FactWords.Find(word) is { } row && row.Place.HasFlag(FactPlace.Step) ? new Had(row.Word, thing, 0, text.At) : null;
    }

    private static Becoming Becoming(Located<string> text, Match match) =>
        new(text.Piece(match.Groups["thing"]), text.PieceOrNull(match.Groups["place"]), text.Piece(match.Groups["value"]), text.At);

    private static Resting? Rest(Located<string> text, FindingList findings)
    {
        var written = text.Piece(StopAbove.Length, text.Value.Length).Trimmed();
        var read = QuantityReader.Quantity(written.Value);
        if (read is { Ok: false, Fault: { } fault })
            findings.Add(Data.QuantityFindings.Of(written, fault, "The stop", "15 min"));
        return read.Ok ? new Resting(written.As(read.Value), text.At) : null;
    }

    private static Happening? Unclear(Located<string> text, FindingList findings)
    {
        if (IsRest(text))
            return null;
        findings.Add(
            StepFaults.ConditionUnclear,
            text.At,
            $"`{Say.Short(text.Value)}` is not a change that can be waited for.",
            "A rule that waits for something else than a change is never asked, and protects nobody.",
            "Write `thing becomes value`, for example `backing-ring becomes fitted`, or `test leak-check`.");
        return null;
    }

    private static Had? NotHad(Located<string> text, FindingList findings)
    {
        findings.Add(
            StepFaults.ConditionUnclear,
            text.At,
            $"`{Say.Short(text.Value)}` is nothing that a step can have.",
            "A rule that asks for something no step can have cannot be met, and is taken out one day.",
            "Write a fact of a step by its word, with a name where one is meant: `call`, `answer`, `count`, `place shim-bag`, `tools face-shield`, or `crew 2`.");
        return null;
    }

    [GeneratedRegex("^" + ThingBecomes + "$")]
    private static partial Regex Becomes { get; }

    [GeneratedRegex("^step +where +" + ThingBecomes + "$")]
    private static partial Regex StepWhere { get; }

    [GeneratedRegex("^" + ThatChanges + "$")]
    private static partial Regex StepThatChanges { get; }

    [GeneratedRegex("^step +that +(?<verb>[a-z]+)(?: +or +(?<verb>[a-z]+))*$")]
    private static partial Regex StepThat { get; }

    [GeneratedRegex("^" + TestPattern + "$")]
    private static partial Regex Test { get; }
}
