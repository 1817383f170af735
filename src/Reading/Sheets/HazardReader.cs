using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Reading.Data;
using Witnessmark.Reading.Faults;
using Witnessmark.Reading.Shapes;

namespace Witnessmark.Reading.Sheets;

internal static class HazardReader
{
    private static readonly ImmutableArray<string> Verbs = [.. FactWords.All.Where(IsWork).Select(w => w.Spelling)];

    private static readonly SpelledForm WorkForm = new("work that a step does", () => $"^(?:{string.Join('|', Verbs)}) ");

    private static readonly Shape Shape = new(
        "hazard",
        "a hazard",
        Row.Word("severity", ["death", "serious", "minor", "property"], "the worst that it does").Must,
        Row.Word("if-ignored", ["will", "could"], "how likely that is where the message is ignored").Must,
        Row.Text("source", "gravity", "where the energy comes from"),
        Row.Quantity("energy", "312 kg", "how large that energy is: a mass, a pressure, a temperature"),
        Row.Name("zone", "under-hook", "where it reaches"),
        Row.List("controls", "[guide studs, call and answer]", "what keeps it away"),
        Row.List("met-by", "[fit brake-stack]", "work that meets it: a step that does it has the message before it", WorkForm),
        Row.Basis);

    public static readonly Row Section = Row.Each("hazards", Shape, "{severity: serious, if-ignored: could}", "what can hurt people or break parts");

    public static Items<Hazard> Hazards(Fields sheet) => new(sheet.Each(Section.Key, One));

    private static Hazard One(Located<string> id, Fields hazard) => new(id, hazard.Map)
    {
        Severity = hazard.Text("severity") is { } severity ? severity.As(Enum.Parse<HarmSeverity>(severity.Value, ignoreCase: true)) : null,
        IfIgnored = hazard.Text("if-ignored") is { } likely ? likely.As(Enum.Parse<HarmLikelihood>(likely.Value, ignoreCase: true)) : null,
        Source = hazard.Text("source"),
        Energy = hazard.Quantity("energy") is { } energy ? energy.As(energy.At.Text) : null,
        Zone = hazard.Text("zone"),
        Controls = hazard.List("controls"),
        MetBy = [.. hazard.List("met-by").Select(line => Work(line, hazard)).OfType<Located<MeetingWork>>()],
    };

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

    private static bool IsWork(FactRow row) => row.Word.HandlesThings()
        || row.Word is FactWord.Drain or FactWord.Fill or FactWord.Measure or FactWord.Inspect or FactWord.Test or FactWord.Lift or FactWord.Land;
}
