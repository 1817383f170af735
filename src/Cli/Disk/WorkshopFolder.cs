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

    /// <summary>Whether a folder has a workshop file and so is the top of a workshop.</summary>
    public static bool IsOne(string folder) => File.Exists(Path.Combine(folder, RootFile));

    /// <param name="only">In full: the file that was named, or null.</param>
    public static WorkshopFolder Of(string folder, string? only, Surroundings around) =>
        new(folder, ShownAs(folder, around), only is null ? null : Path.GetRelativePath(folder, only).Replace('\\', '/'));

    /// <summary>A folder as it is named in messages; nothing for the one that the command was given in.</summary>
    public static string ShownAs(string folder, Surroundings around)
    {
        var shown = Path.GetRelativePath(around.Folder, folder).Replace('\\', '/');
        return shown == "." ? "" : shown.StartsWith("..", StringComparison.Ordinal) ? folder.Replace('\\', '/') : shown;
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
                Write(half, file);
            foreach (var (half, file) in halves)
                File.Move(half, Path.Combine(FullPath, file.Path), overwrite: true);
        }
        catch (Exception e) when (e is UnauthorizedAccessException or IOException)
        {
            throw new RefusedException($"Not everything was written: {e.Message.TrimEnd('.')}.", "Each file is whole, as it was or as it should be. Ask whoever owns the folder for the right to write to it, and give the command again.");
        }
        finally
        {
            halves.ForEach(h => File.Delete(h.Half));
        }
    }

    /// <summary>With the rights of the file whose place it takes.</summary>
    private void Write(string half, OutputFile file)
    {
        File.WriteAllBytes(half, file.Bytes.Span);
        if (!OperatingSystem.IsWindows())
            File.SetUnixFileMode(half, File.GetUnixFileMode(Path.Combine(FullPath, file.Path)));
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

    public static T Readable<T>(string shown, Func<T> read)
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
}
