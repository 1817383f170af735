using System.Text.RegularExpressions;
using Witnessmark.Compiler;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Cli.Disk;

/// <summary>
/// What a path leads to: one workshop, or premises, a folder that is none itself and in which several stand side by side.
/// </summary>
/// <param name="Shown">The folder as it is named in messages.</param>
/// <param name="Workshops">In the order of their names; at least one.</param>
internal sealed partial record Premises(string FullPath, string Shown, IReadOnlyList<WorkshopFolder> Workshops)
{
    private const string Usual = "procedures";

    /// <summary>Characters within which a file of a workshop says what it is.</summary>
    private const int Enough = 2000;

    /// <summary>Whether a path led to the folder around workshops, even if only one stands there.</summary>
    public bool SideBySide => Workshops is not [{ } one] || one.FullPath != FullPath;

    /// <summary>
    /// The workshop that a path belongs to: the folder itself or one above it. Else the workshops that stand in the folder, or <c>procedures</c> below it, or
    /// those that stand in there. Without a path, <c>procedures</c> goes before whatever else stands here.
    /// </summary>
    public static Premises Find(string? path, Surroundings around)
    {
        var full = around.FullPath(path ?? ".");
        if (!Directory.Exists(full) && !File.Exists(full))
            throw new RefusedException($"There is no file or folder {path}.", Neighbours.Of(full));
        var only = File.Exists(full) ? full : null;
        var start = only is null ? full : Path.GetDirectoryName(full)!;
        for (var folder = new DirectoryInfo(start); folder is not null; folder = folder.Parent)
            if (WorkshopFolder.IsOne(folder.FullName))
                return Single(folder.FullName, only, around);
        var below = Path.Combine(start, Usual);
        var side = Within(start, around);
        return (path is not null && side?.Workshops.Count > 1 ? side : null)
            ?? (WorkshopFolder.IsOne(below) ? Single(below, only, around) : null)
            ?? Within(below, around)
            ?? side
            ?? throw None(path, start, only);
    }

    /// <summary>The one workshop there.</summary>
    public static WorkshopFolder One(string? path, Surroundings around)
    {
        var found = Find(path, around);
        return found.Workshops is [{ } one] ? one : throw Which($"{found.Named} holds {Say.Count(found.Workshops.Count, "workshop")}", found.Workshops);
    }

    /// <summary>The one workshop there, or of several the only one that has what was asked for.</summary>
    /// <param name="asked">As it is named in messages: <c>WB-40</c>.</param>
    public static WorkshopFolder WithA(string asked, Func<Library, bool> has, string? path, Surroundings around)
    {
        var found = Find(path, around);
        if (found.Workshops is [{ } one])
            return one;
        var having = found.Workshops.Where(w => has(Pipeline.Check(w.Files()).Library)).ToList();
        return having switch
        {
            [{ } only] => only,
            [] => throw new RefusedException(
                $"{asked} is in none of the workshops of {found.Named}: {Say.Some(found.Workshops.Select(NameOf))}.", $"Look at it again. witnessmark check {found.Shown} goes through all of them."),
            _ => throw Which($"{asked} is in {Say.Count(having.Count, "workshop")} of {found.Named}", having),
        };
    }

    public static WorkshopFolder WithProcedure(string id, string? path, Surroundings around) => WithA(id, l => l.Procedure(id) is not null, path, around);

    /// <summary>The name of a workshop's folder, which is also where its pages are put.</summary>
    public static string NameOf(WorkshopFolder workshop) => Path.GetFileName(workshop.FullPath);

    /// <summary>Files between the workshops that begin like one of theirs, as they are named in messages: no workshop reads them, so nobody checks them.</summary>
    public IReadOnlyList<string> Left(Surroundings around) => SideBySide ? [.. LeftIn(new DirectoryInfo(FullPath), around).Order(StringComparer.Ordinal)] : [];

    private static IEnumerable<string> LeftIn(DirectoryInfo folder, Surroundings around)
    {
        var shown = WorkshopFolder.ShownAs(folder.FullName, around);
        foreach (var file in WorkshopFolder.Readable(shown, () => folder.EnumerateFiles().Where(f => WorkshopFolder.IsRead(f.Name) && f.LinkTarget is null).ToList()))
            if (Telling().IsMatch(Beginning(file)))
                yield return WorkshopFolder.ShownAs(file.FullName, around);
        foreach (var inner in WorkshopFolder.Readable(shown, () => folder.EnumerateDirectories().Where(d => WorkshopFolder.IsRead(d.Name + "/") && d.LinkTarget is null).ToList()))
            if (!WorkshopFolder.IsOne(inner.FullName))
                foreach (var left in LeftIn(inner, around))
                    yield return left;
    }

    private static string Beginning(FileInfo file) => WorkshopFolder.Readable(file.Name, () =>
    {
        using var reader = file.OpenText();
        var begins = new char[Enough];
        return new string(begins, 0, reader.ReadBlock(begins));
    });

    [GeneratedRegex("(?m)^(?:procedure|job|machine|tools|workshop|translates|register): ")]
    private static partial Regex Telling();

    private string Named => Shown.Length == 0 ? "this folder" : Shown;

    private static RefusedException Which(string what, IEnumerable<WorkshopFolder> workshops) =>
        new($"{what}; say which: {Say.Or(workshops.Select(w => $"--in {w.Shown}"))}.", "This works on one workshop at a time; check, tidy and build go through all of them.");

    private static Premises Single(string folder, string? only, Surroundings around) =>
        new(folder, WorkshopFolder.ShownAs(folder, around), [WorkshopFolder.Of(folder, only, around)]);

    private static Premises? Within(string folder, Surroundings around)
    {
        if (!Directory.Exists(folder))
            return null;
        List<WorkshopFolder> standing =
        [
            .. WorkshopFolder.Readable(WorkshopFolder.ShownAs(folder, around), () => Directory.EnumerateDirectories(folder).ToList())
                .Where(f => WorkshopFolder.IsRead(f + "/") && WorkshopFolder.IsOne(f) && new DirectoryInfo(f).LinkTarget is null)
                .Order(StringComparer.Ordinal).Select(f => WorkshopFolder.Of(f, null, around)),
        ];
        return standing.Count == 0 ? null : new Premises(folder, WorkshopFolder.ShownAs(folder, around), standing);
    }

    private static RefusedException None(string? path, string start, string? only)
    {
        var empty = only is null && WorkshopFolder.Readable(path ?? "this folder", () => !Directory.EnumerateFileSystemEntries(start).Any());
        return new RefusedException(
            empty ? $"The folder {path ?? "here"} is empty." : $"No {WorkshopFolder.RootFile} in {path ?? "this folder"}, in a folder of it or above it, so it is no workshop.",
            empty ? $"witnessmark new WB-01 --in {path ?? "."} starts a workshop in it." : "Name the folder that has one. witnessmark new WB-01 --in NEW-FOLDER starts a workshop in an empty or new folder.");
    }
}
