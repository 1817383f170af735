using System.Collections.Concurrent;
using System.Reflection;
using System.Security.Cryptography;
using System.Text;

namespace Witnessmark.Rendering.Html;

/// <summary>Templates, styles and the code of drawings that travel inside the program, by their path: <c>site/sheet.css</c>.</summary>
public static class Resources
{
    /// <summary>Prefix of the code that draws figures.</summary>
    public const string Figures = "figures/";

    private static readonly Assembly Home = typeof(Resources).Assembly;
    private static readonly ConcurrentDictionary<string, byte[]> Read = new(StringComparer.Ordinal);

    /// <exception cref="ArgumentException">There is no such file: a fault of ours, not of an author.</exception>
    public static string Text(string path) => Encoding.UTF8.GetString(Bytes(path));

    public static IEnumerable<string> Names =>
        Home.GetManifestResourceNames().Where(n => n.StartsWith("templates/", StringComparison.Ordinal) || n.StartsWith("site/", StringComparison.Ordinal) || n.StartsWith(Figures, StringComparison.Ordinal)).Order(StringComparer.Ordinal);

    /// <summary>SHA-256 over every file whose path begins with one of the prefixes, names included: which templates made a print. 64 hexadecimal digits.</summary>
    public static string Hash(params string[] prefixes) => Hash(Names.Where(n => prefixes.Any(p => n.StartsWith(p, StringComparison.Ordinal))).Select(n => (n, Bytes(n))));

    internal static string Hash(IEnumerable<(string Name, byte[] Bytes)> files)
    {
        using var sum = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var (name, bytes) in files)
        {
            sum.AppendData(Encoding.UTF8.GetBytes(name + "\n"));
            sum.AppendData(SHA256.HashData(bytes));
        }
        return Convert.ToHexStringLower(sum.GetHashAndReset());
    }

    public static byte[] Bytes(string path) => Read.GetOrAdd(path, Load);

    private static byte[] Load(string path)
    {
        using var stream = Home.GetManifestResourceStream(path) ?? throw new ArgumentException($"no file {path} inside the program", nameof(path));
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
