using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;

namespace Witnessmark.Cli.Disk;

/// <summary>A workshop on disk: the folder that holds <c>workshop.yaml</c>.</summary>
/// <param name="Shown">The folder as it is named in messages: relative to where the command was given when below it.</param>
/// <param name="Only">The file that was named, relative to the folder, or null for the whole workshop.</param>
internal sealed record WorkshopFolder(string FullPath, string Shown, string? Only)
{
    public const string RootFile = "workshop.yaml";
    private const string RecordsFolder = "records";
    private const int MostFiles = 50_000;
    private const int MostRecords = 5_000;
    private const long MostOfRecords = 50_000_000;

    /// <summary>The workshop that a path belongs to: the folder itself, one above it, or <c>procedures</c> below it.</summary>
    public static WorkshopFolder Find(string? path, Surroundings around)
    {
        var full = around.FullPath(path ?? ".");
        if (!Directory.Exists(full) && !File.Exists(full))
            throw new RefusedException($"There is no file or folder {path}.", Neighbours(full));
        var only = File.Exists(full) ? full : null;
        var start = only is null ? full : Path.GetDirectoryName(full)!;
        for (var folder = new DirectoryInfo(start); folder is not null; folder = folder.Parent)
            if (File.Exists(Path.Combine(folder.FullName, RootFile)))
                return Of(folder.FullName, only, around);
        var below = Path.Combine(start, "procedures");
        if (File.Exists(Path.Combine(below, RootFile)))
            return Of(below, only, around);
        var empty = only is null && Readable(path ?? "this folder", () => !Directory.EnumerateFileSystemEntries(full).Any());
        throw new RefusedException(
            empty ? $"The folder {path ?? "here"} is empty." : $"No {RootFile} in {path ?? "this folder"} or above it, so it is no workshop.",
            empty ? $"witnessmark new WB-01 --in {path ?? "."} starts a workshop in it." : "Name the folder that has one. witnessmark new WB-01 --in NEW-FOLDER starts a workshop in an empty or new folder.");
    }

    /// <summary>All files that the language reads, in a fixed order. Records, hidden folders, readme files and links are left out.</summary>
    public IReadOnlyList<RawFile> Files()
    {
        var files = new List<RawFile>();
        Collect(new DirectoryInfo(FullPath), files);
        files.Sort((a, b) => string.CompareOrdinal(a.Path, b.Path));
        return files;
    }

    /// <summary>Sign-offs that came back: the .yaml files in <c>records</c>, in the order of their names. No links, no hidden files, no folders below.</summary>
    public IReadOnlyList<RawFile> Records()
    {
        var folder = new DirectoryInfo(Path.Combine(FullPath, RecordsFolder));
        var shown = Path.Combine(Shown, RecordsFolder).Replace('\\', '/');
        if (!folder.Exists || folder.LinkTarget is not null)
            return [];
        var files = Readable(shown, () => folder.EnumerateFiles().Where(f => IsOurs(f) && !f.Extension.Equals(".md", StringComparison.OrdinalIgnoreCase)).Take(MostRecords + 1).ToList());
        if (files.Count > MostRecords || files.Sum(f => Math.Min(f.Length, RawFile.Limit)) > MostOfRecords)
            throw new RefusedException($"More than {MostRecords} records in {shown}, or more than {MostOfRecords / 1_000_000} MB of them.", "Move the oldest to a folder below it: only what lies in records itself is read.");
        return [.. files.OrderBy(f => f.Name, StringComparer.Ordinal).Select(f => ReadOne(f.FullName, $"{RecordsFolder}/{f.Name}"))];
    }

    public static RawFile ReadOne(string fullPath, string shown)
    {
        var bytes = Bytes(fullPath, shown);
        return new RawFile(shown.Replace('\\', '/'), Math.Max(bytes.Length, new FileInfo(fullPath).Length), bytes.Length > RawFile.Limit ? ReadOnlyMemory<byte>.Empty : bytes);
    }

    public string ShownPath(string path) => Path.Combine(Shown, path).Replace('\\', '/');

    /// <summary>Puts files of the workshop in the place of those that are there: each whole or not at all, and none before all are written.</summary>
    public void Rewrite(IReadOnlyList<OutputFile> files)
    {
        var halves = files.Select(f => (Half: $"{Path.Combine(FullPath, f.Path)}.{Environment.ProcessId}.half", File: f)).ToList();
        try
        {
            foreach (var (half, file) in halves)
                File.WriteAllBytes(half, file.Bytes.Span);
            foreach (var (half, file) in halves)
                File.Move(half, Path.Combine(FullPath, file.Path), overwrite: true);
        }
        catch (Exception e) when (e is UnauthorizedAccessException or IOException)
        {
            throw new RefusedException($"Not everything was written: {e.Message.TrimEnd('.')}.", "Each file is whole, as it was or tidied. Ask whoever owns the folder for the right to write to it, and tidy again.");
        }
        finally
        {
            halves.ForEach(h => File.Delete(h.Half));
        }
    }

    private void Collect(DirectoryInfo folder, List<RawFile> files)
    {
        var shown = Path.Combine(Shown, Path.GetRelativePath(FullPath, folder.FullName)).Replace('\\', '/');
        foreach (var file in Readable(shown, () => folder.EnumerateFiles().Where(IsOurs).ToList()))
        {
            if (files.Count == MostFiles)
                throw new RefusedException($"More than {MostFiles} files in {Shown}.", "A workshop of that size is more likely a wrong folder: name the one with workshop.yaml.");
            files.Add(ReadOne(file.FullName, Path.GetRelativePath(FullPath, file.FullName)));
        }
        foreach (var inner in Readable(shown, () => folder.EnumerateDirectories().ToList()))
            if (IsOurFolder(inner.Name) && inner.LinkTarget is null)
                Collect(inner, files);
    }

    /// <summary>Whether a path inside the workshop is read: a file, or a folder with a slash behind it.</summary>
    public static bool IsRead(string path) => path.EndsWith('/') ? IsOurFolder(Path.GetFileName(path.TrimEnd('/'))) : IsOurFile(Path.GetFileName(path));

    private static bool IsOurFolder(string name) => name is not (RecordsFolder or "out") && !name.StartsWith('.');

    private static bool IsOurFile(string name) =>
        Path.GetExtension(name).ToLowerInvariant() is ".md" or ".yaml" or ".yml" && !name.StartsWith('.') && !name.Equals("README.md", StringComparison.OrdinalIgnoreCase);

    private static bool IsOurs(FileInfo file) => IsOurFile(file.Name) && file.LinkTarget is null;

    /// <summary>Never more than one byte over the limit, whatever the length that a device or a growing file gives.</summary>
    private static byte[] Bytes(string fullPath, string shown) => Readable(shown, () =>
    {
        using var stream = new FileStream(fullPath, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        using var bytes = new MemoryStream();
        var piece = new byte[32 * 1024];
        while (bytes.Length <= RawFile.Limit && stream.Read(piece) is > 0 and var got)
            bytes.Write(piece, 0, got);
        return bytes.ToArray();
    });

    private static T Readable<T>(string shown, Func<T> read)
    {
        try
        {
            return read();
        }
        catch (Exception e) when (e is UnauthorizedAccessException or IOException)
        {
            var reason = e is UnauthorizedAccessException ? "you have no right to." : e.Message;
            throw new RefusedException($"{shown} cannot be read: {reason}", "Ask whoever owns it for the right to read it, or move it out of the workshop.");
        }
    }

    private static WorkshopFolder Of(string folder, string? only, Surroundings around)
    {
        var shown = Path.GetRelativePath(around.Folder, folder).Replace('\\', '/');
        if (shown.StartsWith("..", StringComparison.Ordinal))
            shown = folder.Replace('\\', '/');
        return new WorkshopFolder(folder, shown == "." ? "" : shown, only is null ? null : Path.GetRelativePath(folder, only).Replace('\\', '/'));
    }

    private static string Neighbours(string full)
    {
        var parent = Path.GetDirectoryName(full);
        if (parent is null || !Directory.Exists(parent))
            return "Look at the path again: the folder it should be in is not there either.";
        var near = NearMiss.Of(Path.GetFileName(full), Directory.EnumerateFileSystemEntries(parent).Take(1000).Select(e => Path.GetFileName(e)));
        return near is null ? "Look at the path again." : $"Did you mean {near}?";
    }
}
