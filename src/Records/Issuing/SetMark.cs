using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;

namespace Witnessmark.Records.Issuing;

/// <summary>
/// Three characters, large in the corner of every page of one printed copy. The first is the issuer's own, so two people never give
/// one mark, whatever clone of the workshop each of them has; the others are worked out from what the copy was printed for, and
/// moved on where a copy with that mark is still out. Why: <c>src/Decisions/set-mark.md</c>.
/// </summary>
public static class SetMark
{
    public const int Length = 3;

    /// <summary>No character that a thumb, a photocopier or a biro turns into another: no 0 O D Q, 1 I L, 2 Z, 5 S, 6 G, 8 B, U V.</summary>
    public const string Alphabet = "3479ACEFHJKMNPRTWXY";

    /// <summary>How many marks a person can have out for each of his signs.</summary>
    public static int Each => Alphabet.Length * Alphabet.Length;

    /// <param name="signs">The issuer's own signs, first choice first.</param>
    /// <param name="copy">What the copy is for: hash, unit, serial, place, time, initials, words of a translated one.</param>
    /// <param name="isOut">Whether a copy with that mark is out.</param>
    /// <returns>Null when every mark of these signs is out.</returns>
    public static string? Free(string signs, string[] copy, Func<string, bool> isOut)
    {
        var begin = Number(copy);
        foreach (var sign in signs)
            for (var turn = 0; turn < Each; turn++)
                if (sign + Tail((begin + turn) % Each) is var mark && !isOut(mark))
                    return mark;
        return null;
    }

    /// <summary>The two characters that what the copy is for comes out as.</summary>
    public static string Tail(string[] copy) => Tail(Number(copy));

    private static int Number(string[] copy)
    {
        var digest = SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\n', copy.Prepend("set mark 2").Select(Hashing.NormalForm.Of))));
        return (int)(BinaryPrimitives.ReadUInt64BigEndian(digest) % (ulong)Each);
    }

    private static string Tail(int number) => $"{Alphabet[number / Alphabet.Length]}{Alphabet[number % Alphabet.Length]}";
}
