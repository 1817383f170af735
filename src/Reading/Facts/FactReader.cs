using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Reading.Facts;

/// <summary>Reads one bullet as a fact: <c>key: value</c>.</summary>
public static class FactReader
{
    /// <summary>The fact, or null when it could not be read; then there is a finding that says why.</summary>
    /// <param name="bullet">With a key; a remark is no fact.</param>
    /// <param name="place">Where it stands: under a heading or in a step.</param>
    /// <param name="findings">Takes what is wrong.</param>
    public static Fact? Read(Bullet bullet, FactPlace place, FindingList findings)
    {
        if (bullet is not { Key: { } key, Value: { } value })
            return null;
        if (bullet.IsNote)
            return Refused(FactFindings.Note(bullet), findings);
        if (bullet.Row is not { } row)
            return Refused(FactFindings.Unknown(bullet), findings);
        if ((row.Place & place) == 0)
            return Refused(FactFindings.Misplaced(row, key, place), findings);
        if (value.Value.Length == 0)
            return Refused(FactFindings.Empty(row, key), findings);
        if (value.Value.Contains('\n', StringComparison.Ordinal))
            return Refused(FactFindings.Broken(row, value), findings);
        return FactValues.Read(new FactText(row, value, findings)) is { } read ? new Fact(row.Word, key.At, value, read) : null;
    }

    private static Fact? Refused(Finding finding, FindingList findings)
    {
        findings.Add(finding);
        return null;
    }
}
