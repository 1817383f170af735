using System.Collections.Immutable;
using System.Text;
using Witnessmark.Checking;
using Witnessmark.Comparing;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading;
using Witnessmark.Reading.References;

namespace Witnessmark.Compiler;

/// <summary>What two states of a workshop differ in, and what could not be read of either.</summary>
public sealed record TwoStatesCompared(WorkshopComparison Comparison, ImmutableArray<Finding> OldFaults, ImmutableArray<Finding> NewFaults);

/// <summary>
/// Reads of two states only what a comparison needs. Files that are the same in both are not opened, unless what has changed is
/// shared: a data sheet, a tool list, the workshop file, a common part. Then every procedure may stand on it.
/// </summary>
internal static class TwoStates
{
    public static TwoStatesCompared Compare(IReadOnlyList<StoredFile> old, IReadOnlyList<StoredFile> made, string? only)
    {
        if (Both(old, made) is not { } both)
            return new TwoStatesCompared(new WorkshopComparison([], []), [], []);
        return new TwoStatesCompared(Comparer.Between(both.Old, both.New, Ids(only)), both.OldFaults, both.NewFaults);
    }

    /// <summary>What the rules on changes say of the newer state.</summary>
    public static IEnumerable<Finding> Findings(IReadOnlyList<StoredFile> old, IReadOnlyList<StoredFile> made, string? only)
    {
        if (Both(old, made) is not { } both)
            return [];
        var findings = new FindingList();
        RuleSet.CheckChanges(both.Old, both.New, Comparer.Between(both.Old, both.New, Ids(only)), findings);
        return findings.InReadingOrder();
    }

    private static HashSet<string>? Ids(string? only) => only is null ? null : new HashSet<string>([only], StringComparer.Ordinal);

    /// <summary>Null when no file differs.</summary>
    private static ReadStates? Both(IReadOnlyList<StoredFile> old, IReadOnlyList<StoredFile> made)
    {
        var same = old.Select(f => (f.Path, f.Id)).Intersect(made.Select(f => (f.Path, f.Id))).Select(f => f.Path).ToHashSet(StringComparer.Ordinal);
        if (same.Count == old.Count && same.Count == made.Count)
            return null;
        var opened = new Opened(same);
        var whole = old.Concat(made).Any(f => !same.Contains(f.Path) && (IsShared(f) || opened.IsCommonPart(f)));
        var (before, oldFaults) = Read(opened, old, whole);
        var (after, newFaults) = Read(opened, made, whole);
        return new ReadStates(before, after, oldFaults, newFaults);
    }

    private sealed record ReadStates(Library Old, Library New, ImmutableArray<Finding> OldFaults, ImmutableArray<Finding> NewFaults);

    /// <summary>Adds, to each procedure that differs, its newer state beside the version in force.</summary>
    /// <param name="released">The files when a version was put on record; null when nobody has kept them.</param>
    public static TwoStatesCompared WithReleases(TwoStatesCompared compared, IReadOnlyList<StoredFile> made, Register register, Func<ReleasedVersion, IReadOnlyList<StoredFile>?> released) =>
        compared with
        {
            Comparison = compared.Comparison with
            {
                Procedures = [.. compared.Comparison.Procedures.Select(p => p with { SinceRelease = Since(p, made, register, released) })],
            },
        };

    private static ProcedureComparison? Since(ProcedureComparison procedure, IReadOnlyList<StoredFile> made, Register register, Func<ReleasedVersion, IReadOnlyList<StoredFile>?> released)
    {
        // nothing is in force, or the older state is what is
        if (procedure.New is null || register.InForce(procedure.Id) is not { } inForce || inForce.Hash.Value == procedure.Old?.Hash || released(inForce) is not { } files)
            return null;
        return Compare(files, made, procedure.Id).Comparison.Procedures.FirstOrDefault();
    }

    private static bool IsShared(StoredFile file) => !IsProcedure(file.Path);

    private static bool IsProcedure(string path) => path.EndsWith(".md", StringComparison.OrdinalIgnoreCase);

    private static (Library Library, ImmutableArray<Finding> Faults) Read(Opened opened, IReadOnlyList<StoredFile> files, bool whole)
    {
        var wanted = files.Where(f => whole || IsShared(f) || !opened.Same.Contains(f.Path)).ToList();
        while (true)
        {
            var findings = new FindingList();
            var library = WorkshopReader.Read([.. wanted.Select(opened.Read)], findings);
            var missing = Missing(library).SelectMany(id => opened.Home(id, files.Except(wanted))).Distinct().ToList();
            if (missing.Count > 0)
            {
                wanted.AddRange(missing);
                continue;
            }
            ReferenceCheck.Check(library, findings);
            return (library, [.. findings.InReadingOrder().Where(f => f.Severity == Severity.Fault)]);
        }
    }

    /// <summary>Procedures that are performed and were not read yet.</summary>
    private static IEnumerable<string> Missing(Library library) =>
        library.Procedures.SelectMany(p => p.Uses.Select(u => u.Procedure.Value)).Where(id => library.Procedure(id) is null).Distinct(StringComparer.Ordinal);

    /// <summary>Files that were opened, each once.</summary>
    private sealed class Opened(HashSet<string> same)
    {
        private const int Head = 2048;

        private readonly Dictionary<string, RawFile> _byId = new(StringComparer.Ordinal);

        public HashSet<string> Same => same;

        public RawFile Read(StoredFile file)
        {
            if (!_byId.TryGetValue(file.Id, out var raw))
                _byId[file.Id] = raw = file.Read();
            return raw.Path == file.Path ? raw : raw with { Path = file.Path };
        }

        public bool IsCommonPart(StoredFile file) => HeadOf(file).Contains("common-part: yes", StringComparison.Ordinal);

        /// <summary>The file of a procedure: the one named after it, else the one that says so in its head.</summary>
        public List<StoredFile> Home(string id, IEnumerable<StoredFile> unread)
        {
            var procedures = unread.Where(f => IsProcedure(f.Path)).ToList();
            var named = procedures.Where(f => Path.GetFileNameWithoutExtension(f.Path).Equals(id, StringComparison.OrdinalIgnoreCase)).Where(f => Says(f, id)).ToList();
            return named.Count > 0 ? named : procedures.Where(f => Says(f, id)).ToList();
        }

        private bool Says(StoredFile file, string id) => HeadOf(file).Split('\n').Any(l => l.TrimEnd() is var line && (line == $"procedure: {id}" || line == $"job: {id}"));

        private string HeadOf(StoredFile file) => Encoding.UTF8.GetString(Read(file).Bytes.Span[..(int)Math.Min(Head, Read(file).Bytes.Length)]);
    }
}
