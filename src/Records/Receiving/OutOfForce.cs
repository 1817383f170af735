using Witnessmark.Language.Model;
using Witnessmark.Records.Hashing;

namespace Witnessmark.Records.Receiving;

/// <summary>A version that was worked from and does not hold any more.</summary>
/// <param name="Printed">The one on the paper.</param>
/// <param name="InForce">The one that holds; null when every one was withdrawn.</param>
/// <param name="Since">The day from which the printed one did not hold.</param>
/// <param name="Issued">The day the copy was issued, as its head says; null when it says none.</param>
/// <param name="Withdrawal">Null when it was replaced only.</param>
public sealed record OutOfForce(ReleasedVersion Printed, ReleasedVersion? InForce, string Since, string? Issued, WithdrawnVersion? Withdrawal)
{
    private const int Day = 10;

    /// <summary>The day from which the one in force holds without a break.</summary>
    public string InForceSince { get; private init; } = "";

    /// <summary>The register knows days: a copy of that very day may have been issued after the newer version came.</summary>
    public bool IssuedBefore => Issued is { } day && string.CompareOrdinal(day, Since) < 0;

    /// <summary>Null when it holds, or stands in no register.</summary>
    public static OutOfForce? Of(Register register, string procedure, ProcedureHash printed, SignOff signOff)
    {
        if (register.History(procedure).LastOrDefault(r => printed.IsBegunBy(r.Hash.Value)) is not { } version)
            return null;
        var inForce = register.InForce(procedure);
        if (inForce?.Version.Value == version.Version.Value)
            return null;
        var issued = signOff.Issued?.Value.Trim();
        return new OutOfForce(version, inForce, EndOf(register, version), issued?.Length >= Day ? issued[..Day] : null, register.Withdrawal(version))
        {
            InForceSince = TimeInForce.Of(register, procedure).LastOrDefault()?.From ?? "",
        };
    }

    /// <summary>Its last day in force; that of its release when it held on none.</summary>
    private static string EndOf(Register register, ReleasedVersion version) =>
        TimeInForce.Of(register, version.Procedure.Value).LastOrDefault(t => t.Version?.Version.Value == version.Version.Value)?.Until ?? version.Date.Value;
}
