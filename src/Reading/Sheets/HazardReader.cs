using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Reading.Data;
using Witnessmark.Reading.Faults;

namespace Witnessmark.Reading.Sheets;

internal static class HazardReader
{
    private const string Example = "{severity: serious, if-ignored: could}";

    public static Items<Hazard> Hazards(Fields sheet) => new(sheet.Each("hazards", Example, One));

    private static Hazard One(Located<string> id, Fields hazard)
    {
        var item = new Hazard(id, hazard.Map)
        {
            Severity = Severity(hazard),
            IfIgnored = Likelihood(hazard),
            Source = hazard.Text("source", "gravity"),
            Energy = hazard.Quantity("energy", "312 kg") is { } energy ? energy.As(energy.At.Text) : null,
            Zone = hazard.Name("zone", "under-hook"),
            Controls = hazard.List("controls", "[guide studs, call and answer]"),
            MetBy = [.. hazard.List("met-by", "[fit brake-stack]").Select(line => Work(line, hazard)).OfType<Located<MeetingWork>>()],
        };
        hazard.Needs("severity", "if-ignored");
        return item;
    }

    private static Located<HarmSeverity>? Severity(Fields hazard) =>
        hazard.OneOf("severity", "death", "serious", "minor", "property") is { } word ? word.As(Enum.Parse<HarmSeverity>(word.Value, ignoreCase: true)) : null;

    private static Located<HarmLikelihood>? Likelihood(Fields hazard) =>
        hazard.OneOf("if-ignored", "will", "could") is { } word ? word.As(Enum.Parse<HarmLikelihood>(word.Value, ignoreCase: true)) : null;

    /// <summary><c>fit brake-stack</c>: a verb of steps and a thing.</summary>
    private static Located<MeetingWork>? Work(Located<string> line, Fields hazard)
    {
        var blank = line.Value.IndexOf(' ', StringComparison.Ordinal);
        if (blank > 0 && FactWords.Find(line.Value.AsSpan(0, blank)) is { } verb && IsWork(verb))
        {
            var thing = new Located<string>(line.Value[(blank + 1)..].Trim(), line.Part(new TextSpan(blank + 1, line.Value.Length)));
            return line.As(new MeetingWork(verb.Word, thing));
        }
        hazard.Findings.Add(
            DataFaults.MetByUnclear,
            line.At,
            $"`{Say.Short(line.Value)}` in `met-by` of {hazard.What} is not work that a step does.",
            "A step that meets the hazard needs its message before it; work that is not known is met by no step.",
            $"Write a verb of steps and a thing: `fit brake-stack`. Verbs are {Say.Or(Verbs)}.");
        return null;
    }

    private static readonly ImmutableArray<string> Verbs = [.. FactWords.All.Where(IsWork).Select(w => w.Spelling)];

    private static bool IsWork(FactRow row) => row.Word.HandlesThings()
        || row.Word is FactWord.Drain or FactWord.Fill or FactWord.Measure or FactWord.Inspect or FactWord.Test or FactWord.Lift or FactWord.Land;
}
