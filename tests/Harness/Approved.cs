namespace Witnessmark.Harness;

/// <summary>
/// Approved text: what people see, kept in a file that a person has read. A missing file fails. To approve what is made
/// now, run with WITNESSMARK_APPROVE=1, read the diff, commit it.
/// </summary>
public static class Approved
{
    /// <param name="path">Of the approved file, below <c>tests/</c>.</param>
    public static void Check(string path, string actual)
    {
        var file = Repo.Path(["tests", .. path.Split('/')]);
        var made = Normal(actual);
        if (Environment.GetEnvironmentVariable("WITNESSMARK_APPROVE") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            File.WriteAllText(file, made);
            return;
        }
        var approved = File.Exists(file) ? Normal(File.ReadAllText(file)) : null;
        if (approved == made)
            return;
        var received = Path.Combine(Path.GetDirectoryName(file)!, Path.GetFileNameWithoutExtension(file) + ".received" + Path.GetExtension(file));
        Directory.CreateDirectory(Path.GetDirectoryName(file)!);
        File.WriteAllText(received, made);
        throw new ApprovalException(approved is null
            ? $"{path} is not approved yet; what was made is in {received}"
            : $"{path} differs from what was approved.\n{FirstDifference(approved, made)}\nWhat was made is in {received}");
    }

    private static string Normal(string text) => text.ReplaceLineEndings("\n").TrimEnd('\n') + "\n";

    private static string FirstDifference(string approved, string made)
    {
        var a = approved.Split('\n');
        var b = made.Split('\n');
        var i = 0;
        while (i < a.Length && i < b.Length && a[i] == b[i])
            i++;
        return $"line {i + 1}\n  approved: {(i < a.Length ? a[i] : "(ends)")}\n  made:     {(i < b.Length ? b[i] : "(ends)")}";
    }
}

public sealed class ApprovalException(string message) : Exception(message);
