using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Unicode;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Faults;

namespace Witnessmark.Reading.Data;

/// <summary>Bytes to text: UTF-8 and nothing else. What cannot be seen on paper is not let in.</summary>
public static class Decode
{
    private const int MostPlaces = 8;

    /// <summary>What everybody sees.</summary>
    private static readonly SearchValues<char> Plain = SearchValues.Create([.. Enumerable.Range(' ', '~' - ' ' + 1).Select(c => (char)c), '\t', '\n', '\r']);

    /// <summary>What an editor puts for a sign that it could not read.</summary>
    private const char Lost = '\uFFFD';

    /// <summary>The text, without byte order mark and unseen characters; null when the file is no text that can be read.</summary>
    public static SourceText? Text(RawFile file, FindingList findings)
    {
        if (file.Length > RawFile.Limit)
            return Refuse(file, TooLarge(file.Length), findings);
        var bytes = file.Bytes.Span;
        if (LooksLikeUtf16(bytes))
            return Refuse(file, Utf16, findings);
        var content = Encoding.UTF8.GetString(WithoutMark(bytes));
        // one letter in two codes is one letter: names are looked up by what they look like
        if (Utf8.IsValid(bytes) && !content.IsNormalized(NormalizationForm.FormC))
            content = content.Normalize(NormalizationForm.FormC);
        var source = new SourceText(file.Path, content);
        if (!Utf8.IsValid(bytes))
        {
            findings.Add(InvalidUtf8(source, FirstBad(WithoutMark(bytes))));
            return null;
        }
        if (Unreadable(source, content) is { } fault)
        {
            findings.Add(fault);
            return null;
        }
        return WithoutUnseen(source, findings);
    }

    /// <summary>What makes a text doubtful as a whole; null when nothing does.</summary>
    private static Finding? Unreadable(SourceText source, string content) =>
        content.IndexOf(Lost) is >= 0 and var lost ? LostSign(source, lost)
        : LoneReturn(content) is >= 0 and var lone ? OldLineEnd(source, lone)
        : OpenMerge.In(source);

    /// <summary>A line end of old Macs, which other programs do not take for one.</summary>
    private static int LoneReturn(string content)
    {
        for (var at = content.IndexOf('\r'); at >= 0; at = content.IndexOf('\r', at + 1))
            if (at + 1 == content.Length || content[at + 1] != '\n')
                return at;
        return -1;
    }

    private static Finding OldLineEnd(SourceText source, int at) => new(
        DataFaults.TextEncoding,
        source.At(at, at + 1),
        "A line ends here in a way that only some programs take for a line end (U+000D alone).",
        "Elsewhere two lines run into one, and what stood in the second is gone.",
        "In the editor choose line ends LF (or CRLF) and save it again.");

    private static ReadOnlySpan<byte> WithoutMark(ReadOnlySpan<byte> bytes) => bytes.StartsWith(Encoding.UTF8.Preamble) ? bytes[3..] : bytes;

    private static bool LooksLikeUtf16(ReadOnlySpan<byte> bytes) =>
        bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE]) || bytes.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF]) ||
        (bytes.Length >= 2 && (bytes[0] == 0) != (bytes[1] == 0));

    private static SourceText? Refuse(RawFile file, Func<Location, Finding> say, FindingList findings)
    {
        findings.Add(say(new SourceText(file.Path, "").At(0, 0)));
        return null;
    }

    private static Func<Location, Finding> TooLarge(long length) => at => new Finding(
        DataFaults.TextTooLarge,
        at,
        string.Create(CultureInfo.InvariantCulture, $"This file has {length} bytes; the most that is read is {RawFile.Limit}."),
        "A procedure is some ten thousand bytes. A file this large is not one that a person wrote, and reading it would hold up the whole workshop.",
        "Take it out of the workshop folder, or split it by topic. Pictures belong in files of their own.");

    private static Finding Utf16(Location at) => new(
        DataFaults.TextEncoding,
        at,
        "This file is saved as UTF-16, not as UTF-8.",
        "Signs such as ± and µ come out wrong, and two people then see two different texts.",
        "In the editor choose save as, encoding UTF-8, and save it again.");

    /// <summary>Characters before the first byte that is not UTF-8.</summary>
    private static int FirstBad(ReadOnlySpan<byte> bytes)
    {
        var characters = 0;
        while (Rune.DecodeFromUtf8(bytes, out var rune, out var used) == System.Buffers.OperationStatus.Done)
        {
            characters += rune.Utf16SequenceLength;
            bytes = bytes[used..];
        }
        return characters;
    }

    private static Finding InvalidUtf8(SourceText source, int at)
    {
        var (line, column) = source.PositionOf(at);
        return new Finding(
            DataFaults.TextEncoding,
            source.At(at, Math.Min(at + 1, source.Content.Length)),
            string.Create(CultureInfo.InvariantCulture, $"Line {line}, column {column}: this character is not saved as UTF-8."),
            "It was probably saved in an older Windows encoding. A ± or ° that turns into something else changes a torque or a temperature.",
            "In the editor choose save as, encoding UTF-8, then look at every ±, °, µ and accent again.");
    }

    private static Finding LostSign(SourceText source, int at)
    {
        var (line, column) = source.PositionOf(at);
        return new Finding(
            DataFaults.TextEncoding,
            source.At(at, at + 1),
            string.Create(CultureInfo.InvariantCulture, $"Line {line}, column {column}: a sign was lost here when the file was saved in another encoding."),
            "What stood there can only be guessed: a ±, a ° or a µ, and each makes another value.",
            "Look it up in an older version of the file, type it again, and save as UTF-8.");
    }

    /// <summary>The text as it looks: what cannot be seen is reported once for the file, and left out.</summary>
    private static SourceText WithoutUnseen(SourceText source, FindingList findings)
    {
        if (!HasUnseen(source.Content))
            return source;
        var unseen = Enumerable.Range(0, source.Content.Length).Where(i => IsUnseen(source.Content[i])).ToList();
        var first = unseen[0];
        var (line, column) = source.PositionOf(first);
        var finding = new Finding(
            DataFaults.TextHidden,
            source.At(first, first + 1),
            string.Create(
                CultureInfo.InvariantCulture,
                $"Line {line}, column {column}: a character that cannot be seen, {NameOf(source.Content[first])}{More(unseen.Count)}."),
            "A text with unseen signs can look one way on the screen and mean another: on paper, 10 and 01 could change places.",
            "Delete it: put the cursor behind it and press backspace, or type the line again instead of pasting it.")
        {
            Further = [.. unseen.Skip(1).Take(MostPlaces).Select(i => new FurtherPlace(source.At(i, i + 1), NameOf(source.Content[i])))],
        };
        findings.Add(finding);
        return new SourceText(source.Path, string.Concat(source.Content.Where(c => !IsUnseen(c))));
    }

    private static string More(int count) => count == 1 ? "" : string.Create(CultureInfo.InvariantCulture, $" (and {count - 1} more in this file)");

    private static bool HasUnseen(ReadOnlySpan<char> text)
    {
        // most texts have a handful of signs that need a closer look: ±, ·, °
        while (text.IndexOfAnyExcept(Plain) is >= 0 and var at)
        {
            if (IsUnseen(text[at]))
                return true;
            text = text[(at + 1)..];
        }
        return false;
    }

    internal static bool IsUnseen(char c) => c switch
    {
        (>= ' ' and <= '~') or '\t' or '\n' or '\r' => false,
        '\u00AD' or '\u2028' or '\u2029' => true,
        _ => char.GetUnicodeCategory(c) is UnicodeCategory.Control or UnicodeCategory.Format,
    };

    internal static string NameOf(char c)
    {
        var code = string.Create(CultureInfo.InvariantCulture, $"U+{(int)c:X4}");
        return c switch
        {
            '\0' => $"a zero byte ({code})",
            '\u00AD' => $"a soft hyphen ({code})",
            '\u200B' or '\u200C' or '\u200D' or '\u2060' or '\uFEFF' => $"a blank of no width ({code})",
            '\u200E' or '\u200F' or '\u061C' or (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069') => $"a sign that turns the direction of writing ({code})",
            _ => $"a control sign ({code})",
        };
    }
}
