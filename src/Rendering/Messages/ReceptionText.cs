using System.Globalization;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Wording;
using Witnessmark.Records.Receiving;

namespace Witnessmark.Rendering.Messages;

/// <summary>What became of a sign-off, for people and machines.</summary>
public static class ReceptionText
{
    /// <summary>One line that stands alone: <c>REFUSED for 1 reason. 24 of 24 entries given.</c></summary>
    public static string Verdict(ReceptionResult result)
    {
        var given = string.Create(CultureInfo.InvariantCulture, $"{result.Given} of {result.Asked} entries given.");
        var faults = result.Findings.Count(f => f.Severity == Severity.Fault);
        var queries = result.Findings.Count(f => f.Severity == Severity.Query);
        return result.State switch
        {
            ReceptionState.Refused => result.Asked == 0 ? $"REFUSED for {Say.Count(faults, "reason")}." : $"REFUSED for {Say.Count(faults, "reason")}. {given}",
            ReceptionState.Open => $"OPEN: {Say.Count(queries, "thing")} to do or to look at. {given}",
            _ => $"COMPLETE. {given}",
        };
    }

    public static string Json(ReceptionResult result) => JsonText.Of(json =>
    {
        json.WriteString("state", result.State.ToString().ToLowerInvariant());
        json.WriteNumber("asked", result.Asked);
        json.WriteNumber("given", result.Given);
        FindingJson.Write(json, result.Findings);
    });
}
