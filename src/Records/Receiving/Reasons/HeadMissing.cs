using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>Lines of the head that are still empty, said once.</summary>
public sealed class HeadMissing : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Query("head-missing");

    public static void Check(Held held, FindingList findings)
    {
        var missing = Missing(held.SignOff).ToList();
        if (missing.Count == 0)
            return;
        findings.Add(
            Info,
            Head.PlaceOf(held.SignOff, missing[0]),
            $"The head says no {Say.Some(missing)}.",
            "Later nobody can tell for which machine, at how many hours and from which paper this was signed.",
            "Copy it from the head of the paper; the hours from the meter.");
    }

    private static IEnumerable<string> Missing(SignOff s)
    {
        (string Key, bool IsThere)[] lines =
        [
            ("procedure", !Typed.IsEmpty(s.Procedure)),
            ("version", !Typed.IsEmpty(s.Version)),
            ("hash", !Typed.IsEmpty(s.Hash)),
            ("copy", !Typed.IsEmpty(s.Copy)),
            ("issued", !Typed.IsEmpty(s.Issued)),
            ("issued-by", !Typed.IsEmpty(s.IssuedBy)),
            ("unit", !Typed.IsEmpty(s.Unit)),
            ("serial", !Typed.IsEmpty(s.Serial)),
            ("hours", s.Hours is not null),
            ("place", !Typed.IsEmpty(s.Place)),
            ("crew", s.Crew.Any(c => !string.IsNullOrWhiteSpace(c.Initials.Value))),
            ("typed-by", !Typed.IsEmpty(s.TypedBy)),
        ];
        return lines.Where(l => !l.IsThere).Select(l => l.Key);
    }
}
