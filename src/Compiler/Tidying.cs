using System.Collections.Immutable;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Reading;
using Witnessmark.Reading.Tidying;
using Witnessmark.Records.Hashing;

namespace Witnessmark.Compiler;

/// <summary>What is to be laid out anew, or why nothing is.</summary>
/// <param name="LeftAlone">Paths of files that would say something else when tidied: a fault of ours, and they stay as they are.</param>
/// <param name="Faults">What makes it doubtful what the files say; then nothing is tidied.</param>
public sealed record TidiedWorkshop(ImmutableArray<TidiedFile> Files, ImmutableArray<string> LeftAlone, ImmutableArray<Finding> Faults);

internal static class Tidying
{
    public static TidiedWorkshop Of(IReadOnlyList<RawFile> files, string? only)
    {
        var findings = new FindingList();
        var said = Said(files, findings);
        ImmutableArray<Finding> faults = [.. findings.InReadingOrder().Where(f => f.Severity == Severity.Fault)];
        if (!faults.IsEmpty)
            return new TidiedWorkshop([], [], faults);
        ImmutableArray<TidiedFile> tidied = [.. files.Where(f => only is null || f.Path == only).Select(Tidier.Tidy).OfType<TidiedFile>()];
        // the tidying is trusted no further than it can be proved: no hash may change
        if (Keeps(files, tidied, said))
            return new TidiedWorkshop(tidied, [], []);
        var kept = tidied.Where(t => Keeps(files, [t], said)).ToImmutableArray();
        return Keeps(files, kept, said)
            ? new TidiedWorkshop(kept, [.. tidied.Except(kept).Select(t => t.Path)], [])
            : new TidiedWorkshop([], [.. tidied.Select(t => t.Path)], []);
    }

    private static bool Keeps(IReadOnlyList<RawFile> files, ImmutableArray<TidiedFile> tidied, string said)
    {
        var anew = tidied.ToDictionary(t => t.Path, StringComparer.Ordinal);
        var findings = new FindingList();
        var then = Said([.. files.Select(f => anew.GetValueOrDefault(f.Path) is { } t ? new RawFile(f.Path, t.Tidied.Bytes.Length, t.Tidied.Bytes) : f)], findings);
        return then == said && findings.InReadingOrder().All(f => f.Severity != Severity.Fault);
    }

    /// <summary>Every procedure with its hash, and the words of every translation.</summary>
    private static string Said(IReadOnlyList<RawFile> files, FindingList findings)
    {
        var library = WorkshopReader.Read(files, findings);
        return string.Join('\n', library.Procedures.Select(p => $"{p.Id.Value} {ProcedureHash.Of(library, p).Hex} {Words(library.ScopeOf(p))}"));
    }

    private static string Words(Language.Model.Scope scope) =>
        string.Join(' ', Language.Model.SheetLanguages.All.Select(l => WordsHash.Of(Language.Model.SheetTranslations.Of(scope, l)).Hex));
}
