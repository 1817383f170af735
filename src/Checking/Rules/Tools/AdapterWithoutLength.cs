using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Tools;

/// <summary>Bolts are tightened through an adapter, and the setting cannot be worked out.</summary>
public sealed class AdapterWithoutLength : IProcedureRule
{
    public static RuleInfo Info { get; } = new("adapter-without-length", "Tools", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var job in scope.Tightenings())
        {
            // the wrench drives the bolt itself
            if (job is not { Wrench: { } wrench, Adapter: { } adapter })
                continue;
            // an impact tool is another fault; both lengths are known
            if (!wrench.IsTorqueWrench || (wrench.Length is not null && adapter.Extension is not null))
                continue;
            var missing = (wrench.Length, adapter.Extension) switch
            {
                (null, null) => $"gives neither the length of {wrench.Id.Value} nor the extension of {adapter.Id.Value}",
                (null, _) => $"does not give the length of {wrench.Id.Value}",
                _ => $"does not give the extension of {adapter.Id.Value}",
            };
            findings.Add(
                Info,
                job.At,
                $"{job.Group.Id.Value} are tightened with {wrench.Id.Value} through {adapter.Id.Value}, and the tool list {missing}.",
                "An adapter makes the wrench longer: the bolt gets more than the dial shows. Without both lengths nobody can say how much less to dial.",
                "Measure them and write them in the tool list: `length` from the drive to the middle of the grip, `extension` from the drive to the middle of the jaw.",
                new FurtherPlace(wrench.Length is null ? wrench.Id.At : adapter.Id.At, "the length is missing here"));
        }
    }
}
