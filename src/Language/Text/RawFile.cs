using System.Text;

namespace Witnessmark.Language.Text;

/// <summary>A file as it lies on disk. Decoding is the reader's: a bad encoding is a finding, not an exception.</summary>
/// <param name="Path">Relative to the workshop, with forward slashes.</param>
/// <param name="Length">In bytes. A file over the limit comes with its length and without its bytes.</param>
public sealed record RawFile(string Path, long Length, ReadOnlyMemory<byte> Bytes)
{
    /// <summary>Largest file that is read. The longest procedure of the demo is 12 KB; a sheet of a machine some 40 KB.</summary>
    public const long Limit = 1_000_000;

    public static RawFile Of(string path, byte[] bytes) => new(path, bytes.Length, bytes);
}

/// <summary>A file to be written: the core makes it, the command line puts it on disk, whole or not at all.</summary>
public sealed record OutputFile(string Path, ReadOnlyMemory<byte> Bytes)
{
    public static OutputFile Of(string path, string text) => new(path, Encoding.UTF8.GetBytes(text));
}
