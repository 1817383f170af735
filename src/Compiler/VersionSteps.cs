using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Records.Hashing;
using Witnessmark.Rendering.Site;

namespace Witnessmark.Compiler;

/// <summary>What each released version changed in the one before it, and what has changed since the last. A text counts only when it gives the registered hash.</summary>
internal sealed class VersionSteps(Library library, ImmutableDictionary<string, ProcedureHash> hashes, KeptVersions kept)
{
    public ImmutableArray<VersionStep> All() => [.. library.Register.Released.Select(r => r.Procedure.Value).Distinct(StringComparer.Ordinal).SelectMany(Of)];

    private IEnumerable<VersionStep> Of(string id)
    {
        var versions = library.Register.History(id);
        foreach (var (before, version) in versions.Zip(versions.Skip(1)))
            yield return Step(before, version, Files(version));
        if (hashes.GetValueOrDefault(id) is { } here && library.Register.InForce(id) is { } inForce && !here.IsBegunBy(inForce.Hash.Value))
            yield return Step(inForce, null, new KeptFiles(kept.Here, ""));
    }

    private VersionStep Step(ReleasedVersion before, ReleasedVersion? version, KeptFiles files)
    {
        var old = Files(before);
        var step = new VersionStep(before, version, null, "");
        if (old.Files is null || files.Files is null)
            return step with { Why = $"What differs from {before.Version} is not known. {(old.Files is null ? old.Why : files.Why)}" };
        var compared = TwoStates.Compare(Plain(old.Files), Plain(files.Files), before.Procedure.Value).Comparison.Procedures.FirstOrDefault(p => p.Id == before.Procedure.Value);
        if (compared is not { Old: { } was, New: { } made })
            return step with { Why = $"What differs from {before.Version} is not known: the files that git has for the two say the same." };
        var why = Differs(before, was.Hash) ?? (version is null ? null : Differs(version, made.Hash));
        return why is null ? step with { Comparison = compared } : step with { Why = why };
    }

    private KeptFiles Files(ReleasedVersion version) =>
        hashes.GetValueOrDefault(version.Procedure.Value)?.IsBegunBy(version.Hash.Value) == true ? new KeptFiles(kept.Here, "") : kept.Of(version);

    private static string? Differs(ReleasedVersion version, string hash) => new ProcedureHash("", hash).IsBegunBy(version.Hash.Value)
        ? null
        : $"What differs is not known for certain: the files that git has for {version.Version} give the hash {ShortHash.Of(hash)}; registered is {ShortHash.Of(version.Hash.Value)}.";

    // the register changes with every release and is no part of any procedure
    private static List<StoredFile> Plain(IReadOnlyList<StoredFile> files) => [.. files.Where(f => !Register.IsOne(f.Path))];
}
