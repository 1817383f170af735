using System.Collections.Immutable;

namespace Witnessmark.Language.Model;

/// <summary>A stretch of days on which one version of a procedure held, or none did.</summary>
/// <param name="From">The first day: 2031-05-03.</param>
/// <param name="Until">The day on which it ended and the next stretch begins; null while it lasts.</param>
/// <param name="Version">Null where every version released until then was withdrawn.</param>
public sealed record TimeInForce(string From, string? Until, ReleasedVersion? Version)
{
    /// <summary>Without gaps, from the first release on. What was replaced on the day it was released held on no day.</summary>
    public static ImmutableArray<TimeInForce> Of(Register register, string procedure)
    {
        var days = register.Released.Where(r => r.Procedure.Value == procedure).Select(r => r.Date.Value)
            .Concat(register.Withdrawn.Where(w => w.Procedure.Value == procedure).Select(w => w.Date.Value))
            .Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal);
        var times = ImmutableArray.CreateBuilder<TimeInForce>();
        foreach (var day in days)
        {
            var holds = On(register, procedure, day);
            if (times.Count == 0 ? holds is null : Same(times[^1].Version, holds))
                continue;
            if (times.Count > 0)
                times[^1] = times[^1] with { Until = day };
            times.Add(new TimeInForce(day, null, holds));
        }
        return times.ToImmutable();
    }

    /// <summary>The version that held at the end of a day.</summary>
    private static ReleasedVersion? On(Register register, string procedure, string day) => new Register
    {
        Released = [.. register.Released.Where(r => string.CompareOrdinal(r.Date.Value, day) <= 0)],
        Withdrawn = [.. register.Withdrawn.Where(w => string.CompareOrdinal(w.Date.Value, day) <= 0)],
    }.InForce(procedure);

    private static bool Same(ReleasedVersion? a, ReleasedVersion? b) => a?.Version.Value == b?.Version.Value;
}
