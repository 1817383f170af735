using System.Text.Json;
using Witnessmark.Comparing;
using Witnessmark.Language.Text;
using Witnessmark.Rendering.Messages;

namespace Witnessmark.Rendering.Comparisons;

/// <summary>A comparison for machines: one JSON object, lines counted from 1.</summary>
public static class ComparisonJson
{
    public static string Of(WorkshopComparison comparison) => JsonText.Of(json =>
    {
        json.WriteString("class", ChangeWords.Of(comparison.Class));
        json.WriteStartArray("procedures");
        foreach (var procedure in comparison.Procedures)
            Write(json, procedure);
        json.WriteEndArray();
        json.WriteStartArray("workshop");
        foreach (var change in comparison.House)
            Write(json, change);
        json.WriteEndArray();
    });

    private static void Write(Utf8JsonWriter json, ProcedureComparison procedure)
    {
        json.WriteStartObject();
        json.WriteString("procedure", procedure.Id);
        json.WriteString("class", ChangeWords.Of(procedure.Class));
        Write(json, "old", procedure.Old);
        Write(json, "new", procedure.New);
        json.WriteStartArray("changes");
        foreach (var change in procedure.Changes)
            Write(json, change);
        json.WriteEndArray();
        if (procedure.SinceRelease is { } since)
        {
            json.WritePropertyName("since-release");
            Write(json, since);
        }
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, string name, ComparedVersion? version)
    {
        if (version is null)
        {
            json.WriteNull(name);
            return;
        }
        json.WriteStartObject(name);
        json.WriteString("version", version.Version);
        json.WriteString("hash", version.Hash);
        json.WriteString("title", version.Title);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, Change change)
    {
        json.WriteStartObject();
        json.WriteString("class", ChangeWords.Of(change.Class));
        json.WriteString("where", change.Where);
        json.WriteString("what", change.What);
        json.WriteString("old", change.Old);
        json.WriteString("new", change.New);
        json.WriteString("sense", ChangeWords.Of(change.Sense));
        if (change.Through is { } through)
            json.WriteString("performed", through);
        if (change.Share is { } share)
            json.WriteNumber("share", Math.Round(share, 4));
        if (change.Because is { } because)
            json.WriteString("because", because);
        json.WriteStartArray("hazards");
        foreach (var hazard in change.Hazards)
            json.WriteStringValue(hazard);
        json.WriteEndArray();
        Worked(json, change);
        Place(json, "old-at", change.OldAt);
        Place(json, "new-at", change.NewAt);
        json.WriteEndObject();
    }

    private static void Worked(Utf8JsonWriter json, Change change)
    {
        json.WriteStartArray("worked");
        foreach (var (what, old, made) in change.Worked)
        {
            json.WriteStartObject();
            json.WriteString("what", what);
            json.WriteString("old", old);
            json.WriteString("new", made);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static void Place(Utf8JsonWriter json, string name, Location? at)
    {
        if (at is { } place)
            json.WriteString(name, $"{place.Source.Path}:{place.Start.Line}");
    }
}
