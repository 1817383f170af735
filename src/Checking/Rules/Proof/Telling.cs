using System.Collections.Immutable;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Proof;

namespace Witnessmark.Checking.Rules.Proof;

/// <summary>How a breach is told: the step with all that perform it, and the steps that bring the machine there.</summary>
internal static class Telling
{
    /// <summary><c>step 6 of WB-60 ← step 32 of centre-left-reline</c></summary>
    public static string Chain(Moment moment) =>
        $"step {moment.Place.Step.Number} of {moment.Place.Procedure.Id}{(moment.PerformedBy is { } by ? $" ← {Chain(by)}" : "")}";

    public static string Begin(Moment moment) => Say.Capital(Chain(moment));

    public static FurtherPlace[] Story(Breach breach) =>
        [.. breach.Story.Select(line => new FurtherPlace(line.At.Place.Step.Name.At, $"{Chain(line.At)}: {DeclaredName.SpokenIn(line.Said)}"))];

    /// <summary>The step that has to be changed: the last one that brought it about, else where it shows.</summary>
    public static Location Cause(Breach breach) => (breach.Story is [.., var last] ? last.At : breach.At).Place.Step.Name.At;

    /// <summary>What has to hold, as it is written.</summary>
    public static string Written(Breach breach) => breach.Broken?.At.Text ?? breach.Thing ?? "";

    public static IEnumerable<Breach> Sure(ProvedWork proved, params ImmutableArray<BreachKind> kinds) => proved.Breaches.Where(b => b.Sure && kinds.Contains(b.Kind));

    public static string Because(Interlock? rule, string otherwise) => rule?.Because is { Value.Length: > 0 } because ? $"{Say.Capital(because.Value)}." : otherwise;
}
