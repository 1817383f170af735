using Witnessmark.Language.Text;

namespace Witnessmark.Cli.Disk;

/// <summary>
/// Writes files whole or not at all: everything goes into a new folder beside the target, which then takes its place. A
/// folder that holds anything this program did not make is never touched.
/// </summary>
internal static class OutputFolder
{
    /// <summary>Marks a folder as made by this program, so that it may be replaced, and names the files that it made.</summary>
    private const string Marker = ".made-by-witnessmark";
    private const string MarkerHead = "This folder is made anew by witnessmark; these files are its own:";

    /// <summary>Replaces the folder by these files.</summary>
    public static void Replace(string folder, string shown, IEnumerable<OutputFile> files)
    {
        Guarded(shown, () =>
        {
            folder = Path.TrimEndingDirectorySeparator(Target(folder, shown));
            Spare(folder, shown);
            var fresh = $"{folder}.{Environment.ProcessId}.new";
            try
            {
                var made = new List<string>();
                foreach (var file in files)
                {
                    Put(fresh, file);
                    made.Add(file.Path);
                }
                Put(fresh, OutputFile.Of(Marker, $"{MarkerHead}\n{string.Join('\n', made)}\n"));
                Swap(fresh, folder);
            }
            finally
            {
                if (Directory.Exists(fresh))
                    Directory.Delete(fresh, recursive: true);
            }
        });
    }

    /// <summary>Where a link leads, so that the link stays.</summary>
    private static string Target(string folder, string shown)
    {
        if (Directory.Exists(folder))
            return Directory.ResolveLinkTarget(folder.TrimEnd('/', '\\'), returnFinalTarget: true)?.FullName ?? folder;
        if (new FileInfo(folder).LinkTarget is not null)
            throw new RefusedException($"{shown} is a link that leads to no folder.", "Name another folder with --out.");
        if (File.Exists(folder))
            throw new RefusedException($"{shown} is a file, not a folder.", "Name another folder with --out.");
        return folder;
    }

    /// <summary>Refuses where a file would be lost that this program did not make.</summary>
    private static void Spare(string folder, string shown)
    {
        if (!Directory.Exists(folder) || !Directory.EnumerateFileSystemEntries(folder).Any())
            return;
        var marker = Path.Combine(folder, Marker);
        if (!File.Exists(marker))
            throw new RefusedException($"{shown} holds files that witnessmark did not make; they would be lost.", "Name an empty or new folder with --out.");
        var ours = File.ReadLines(marker).Skip(1).Append(Marker).ToHashSet(StringComparer.Ordinal);
        var other = Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories)
            .Select(f => Path.GetRelativePath(folder, f).Replace('\\', '/')).FirstOrDefault(f => !ours.Contains(f));
        if (other is not null)
            throw new RefusedException($"{shown} holds {other}, which witnessmark did not make; it would be lost.", "Move it elsewhere, or name an empty or new folder with --out.");
    }

    /// <summary>Adds files to a folder; none of them may be there yet.</summary>
    public static void Add(string folder, string shown, IReadOnlyList<OutputFile> files)
    {
        Guarded(shown, () =>
        {
            foreach (var file in files)
                if (Path.Exists(Path.Combine(folder, file.Path)))
                    throw new RefusedException($"{Path.Combine(shown, file.Path)} is there already and stays as it is.", "Name another place with --out, or move the old file away.");
            var made = new List<string>();
            try
            {
                foreach (var file in files)
                    made.Add(Put(folder, file));
            }
            catch
            {
                made.ForEach(File.Delete);
                throw;
            }
        });
    }

    private static string Put(string folder, OutputFile file)
    {
        var target = Path.GetFullPath(Path.Combine(folder, file.Path));
        if (!target.StartsWith(Path.GetFullPath(folder) + Path.DirectorySeparatorChar, StringComparison.Ordinal))
            throw new InvalidOperationException($"{file.Path} leads out of the output folder");
        Directory.CreateDirectory(Path.GetDirectoryName(target)!);
        var half = $"{target}.{Environment.ProcessId}.half";
        try
        {
            using (var stream = new FileStream(half, FileMode.CreateNew, FileAccess.Write))
                stream.Write(file.Bytes.Span);
            File.Move(half, target);
        }
        finally
        {
            File.Delete(half);
        }
        return target;
    }

    private static void Swap(string fresh, string folder)
    {
        if (!Directory.Exists(folder))
        {
            Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(folder))!);
            Directory.Move(fresh, folder);
            return;
        }
        var old = $"{folder}.{Environment.ProcessId}.old";
        Directory.Move(folder, old);
        try
        {
            Directory.Move(fresh, folder);
        }
        catch
        {
            Directory.Move(old, folder);
            throw;
        }
        Directory.Delete(old, recursive: true);
    }

    private static void Guarded(string shown, Action write)
    {
        try
        {
            write();
        }
        catch (Exception e) when (e is UnauthorizedAccessException or IOException)
        {
            throw new RefusedException($"Nothing was written: {shown} cannot be written to, {Reason(e)}.", "Name a folder that you may write to with --out.");
        }
    }

    private static string Reason(Exception e) => e switch
    {
        UnauthorizedAccessException => "you have no right to",
        DirectoryNotFoundException or FileNotFoundException => "there is no such place",
        _ => e.Message.TrimEnd('.'),
    };
}
