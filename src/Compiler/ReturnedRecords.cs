using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Records.Receiving;
using Witnessmark.Records.Wear;

namespace Witnessmark.Compiler;

/// <summary>Receives every sign-off that came back, for what they say together.</summary>
internal static class ReturnedRecords
{
    public static WearLog Wear(Bench bench, IReadOnlyList<RawFile> records, KeptVersions kept)
    {
        var readings = ImmutableArray.CreateBuilder<WornReading>();
        var leftOut = ImmutableArray.CreateBuilder<LeftOutRecord>();
        var receiving = new Receiving(bench, kept);
        var copies = new HashSet<string>(StringComparer.Ordinal);
        foreach (var record in records)
        {
            var (signOff, result, printed) = receiving.Hold(record);
            if (Objection(signOff, result, copies) is { } why)
                leftOut.Add(new LeftOutRecord(record.Path, MachineOf(signOff, bench), result.State, why));
            else
                readings.AddRange(WornReadings.Of(signOff!, printed));
        }
        return new WearLog(readings.ToImmutable(), leftOut.ToImmutable());
    }

    /// <summary>Why it gives no point; null when it may.</summary>
    private static string? Objection(SignOff? signOff, ReceptionResult result, HashSet<string> copies)
    {
        if (signOff is null || result.State != ReceptionState.Complete)
            return result.Findings.MaxBy(f => f.Severity)?.Found ?? "It cannot be read.";
        if (!WornReadings.HasHours(signOff))
            return "No machine has run so many hours.";
        return copies.Add(signOff.Copy!.Value.Value.Trim()) ? null : "Another record of the same copy came before it.";
    }

    private static string? MachineOf(SignOff? signOff, Bench bench) =>
        signOff?.Procedure is { } id ? bench.Library.Procedure(id.Value)?.Machine?.Value : null;
}
