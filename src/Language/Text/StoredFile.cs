using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace Witnessmark.Language.Text;

/// <summary>A file that need not be read to be told from another: what has one id has the same bytes, line ends aside.</summary>
/// <param name="Path">Relative to the workshop, with forward slashes.</param>
/// <param name="Id">Of its bytes, as git names them.</param>
public sealed record StoredFile(string Path, string Id, Func<RawFile> Read)
{
    public static StoredFile Of(RawFile file) => new(file.Path, IdOf(AsKept(file.Bytes)), () => file);

    // on some systems git hands out lines that end in CR LF, and keeps them with LF
    private static ReadOnlySpan<byte> AsKept(ReadOnlyMemory<byte> bytes)
    {
        var written = bytes.Span;
        if (!written.Contains((byte)'\r'))
            return written;
        var kept = new List<byte>(written.Length);
        for (var i = 0; i < written.Length; i++)
            if (written[i] != '\r' || i + 1 == written.Length || written[i + 1] != '\n')
                kept.Add(written[i]);
        return kept.ToArray();
    }

    /// <summary>SHA-1 over <c>blob LENGTH NUL bytes</c>: the name that git gives the same bytes. It tells files apart, it proves nothing.</summary>
    private static string IdOf(ReadOnlySpan<byte> bytes)
    {
        var head = Encoding.ASCII.GetBytes(string.Create(CultureInfo.InvariantCulture, $"blob {bytes.Length}\0"));
        return Convert.ToHexStringLower(SHA1.HashData([.. head, .. bytes]));
    }
}
