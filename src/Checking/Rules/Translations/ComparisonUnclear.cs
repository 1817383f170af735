using System.Globalization;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Translations;

/// <summary>Who translated or compared is nobody in the workshop file, or the day cannot be read one way only.</summary>
public sealed class ComparisonUnclear : ITranslationRule
{
    public static RuleInfo Info { get; } = new("comparison-unclear", "Translations", Severity.Query);

    public static void Check(TranslatedFile file, FindingList findings)
    {
        var people = file.Library.Workshop.People;
        Located<string>[] readers = file.Translation.Compared?.By is { } by ? [.. file.Translation.Translators, by] : [.. file.Translation.Translators];
        foreach (var who in readers)
            // one of the workshop; that it has none at all is said of the procedure
            if (people.Count > 0 && people.Find(who.Value) is null)
                Report(who.At, $"{who.Value} is nobody in the workshop file; it has {Say.And(people.Names)}.", "Write the initials of somebody under `people:`, or add the person there.", findings);
        // a day of the calendar, year first
        if (file.Translation.Compared?.Date is { } date && !DateOnly.TryParseExact(date.Value, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _))
            Report(date.At, $"The day of the comparison can be read in more than one way, or in none: “{Say.Short(date.Value)}”.", "Write year, month, day, in quotes: `date: \"2031-05-03\"`.", findings);
    }

    private static void Report(Location at, string found, string putRight, FindingList findings) => findings.Add(
        Info,
        at,
        found,
        "Years later somebody asks who had read both languages before the machine went back to work, and when. This leads to nobody.",
        putRight);
}
