using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;

namespace Witnessmark.Records.Issuing;

/// <summary>
/// Three characters, large in the corner of every page of one printed copy. They are worked out from what the copy was
/// printed for, so <c>receive</c> can work them out again: a blank that was mixed up with another sheet does not fit.
/// Why it is worked out and not drawn: <c>src/Decisions/set-mark.md</c>.
/// </summary>
public static class SetMark
{
    public const int Length = 3;

    /// <summary>No character that a thumb, a photocopier or a biro turns into another: no 0 O D Q, 1 I L, 2 Z, 5 S, 6 G, 8 B, U V.</summary>
    public const string Alphabet = "3479ACEFHJKMNPRTWXY";

    private static readonly ulong Marks = (ulong)(Alphabet.Length * Alphabet.Length * Alphabet.Length);

    /// <param name="hash">All 64 digits.</param>
    /// <param name="issuedAt">As it stands in the blank: <c>2031-06-11T06:40:00+02:00</c>.</param>
    /// <param name="words">Of a translated copy; null in the original's own words.</param>
    public static string Of(string hash, string unit, string serial, string place, string issuedAt, string issuedBy, CopyWords? words = null)
    {
        string[] parts = ["set mark 1", hash.ToLowerInvariant(), unit, serial, place, issuedAt, issuedBy];
        var own = Number(parts);
        if (words is null)
            return Mark(own);
        // two crews of one machine get their copies in one second: these two never share a mark
        var translated = Number([.. parts, words.ToString()]);
        return Mark(translated == own ? translated + 1 : translated);
    }

    private static ulong Number(string[] parts)
    {
        var digest = SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\n', parts.Select(Hashing.NormalForm.Of))));
        return BinaryPrimitives.ReadUInt64BigEndian(digest) % Marks;
    }

    private static string Mark(ulong number)
    {
        var mark = new char[Length];
        for (var i = 0; i < Length; i++)
        {
            mark[i] = Alphabet[(int)(number % (ulong)Alphabet.Length)];
            number /= (ulong)Alphabet.Length;
        }
        return new string(mark);
    }
}
