using System.Globalization;
using System.Text.Json;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Wording;
using Witnessmark.Records.Receiving;

namespace Witnessmark.Rendering.Messages;

/// <summary>What became of a sign-off, for people and machines.</summary>
public static class ReceptionText
{
    /// <summary>One line that stands alone: <c>REFUSED for 1 reason. 24 of 24 entries given.</c></summary>
    public static string Verdict(ReceptionResult result) => result.Older is { } older ? $"{Became(result)} {Older(older)}" : Became(result);

    /// <summary>What an older version means for a sign-off: <c>Worked from 2.0.0, not in force since 2031-06-11; …</c></summary>
    private static string Older(OutOfForce older)
    {
        var now = older.InForce is { } inForce ? $"{inForce.Version} is in force since {older.InForceSince}." : "No version is in force.";
        var issued = older.Issued is null ? "" : older.IssuedBefore ? "; the copy was issued before that day" : "; the copy was not issued before that day";
        return $"Worked from {older.Printed.Version}, not in force since {older.Since}{issued}. {now}";
    }

    private static string Became(ReceptionResult result)
    {
        var given = string.Create(CultureInfo.InvariantCulture, $"{result.Given} of {result.Asked} entries given.");
        var faults = result.Findings.Count(f => f.Severity == Severity.Fault);
        var queries = result.Findings.Count(f => f.Severity == Severity.Query);
        return result.State switch
        {
            ReceptionState.Refused => result.Asked == 0 ? $"REFUSED for {Say.Count(faults, "reason")}." : $"REFUSED for {Say.Count(faults, "reason")}. {given}",
            ReceptionState.Open => $"OPEN: {Say.Count(queries, "thing")} to do or to look at. {given}",
            _ => $"COMPLETE. {given}",
        } + Ended(result.Ended);
    }

    /// <summary>An ending that hands the work up is a complete record of work that is not done.</summary>
    private static string Ended(WorkEnded? ended) =>
        ended is null ? "" : $" Ended at step {ended.Step}: {DeclaredName.Spoken(ended.How.Name.Value)}, {Words.English.Ending(ended.How.Kind)}.";

    public static string Json(ReceptionResult result) => JsonText.Of(json =>
    {
        json.WriteString("state", result.State.ToString().ToLowerInvariant());
        json.WriteNumber("asked", result.Asked);
        json.WriteNumber("given", result.Given);
        if (result.Older is { } older)
            Write(json, older);
        if (result.Ended is { } ended)
        {
            json.WriteStartObject("ended");
            json.WriteString("step", ended.Step);
            json.WriteString("ending", ended.How.Name.Value);
            json.WriteString("means", Words.English.Ending(ended.How.Kind));
            json.WriteEndObject();
        }
        FindingJson.Write(json, result.Findings);
    });

    private static void Write(Utf8JsonWriter json, OutOfForce older)
    {
        json.WriteStartObject("older-version");
        json.WriteString("version", older.Printed.Version.Value);
        json.WriteString("not-in-force-since", older.Since);
        json.WriteBoolean("issued-before", older.IssuedBefore);
        json.WriteString("in-force-now", older.InForce?.Version.Value);
        json.WriteEndObject();
    }
}
