using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using PdfSharp.Pdf;
using PdfSharp.Pdf.IO;
using Witnessmark.Rendering.Checklist;

namespace Witnessmark.Press;

/// <summary>
/// What is done to a PDF after the browser: a code on every page, and nothing in it that tells one printing of the same
/// sheet from another.
/// </summary>
internal static partial class Finishing
{
    /// <summary>A sheet's own date, if it has one, stands on the paper; when it went through the press is nobody's business.</summary>
    private static readonly DateTime NoDate = new(2000, 1, 1, 0, 0, 0, DateTimeKind.Utc);

    private const int MarkLength = 16;

    public static PrintedSheet Of(byte[] pdf, PressSheet sheet)
    {
        using var read = new MemoryStream(pdf, writable: false);
        using var document = PdfReader.Open(read, PdfDocumentOpenMode.Modify);
        var pages = document.PageCount;
        for (var i = 0; sheet.Code is { } code && i < pages; i++)
            CodeStamp.Put(document.Pages[i], code, i + 1, pages);
        var mark = SHA256.HashData(Encoding.UTF8.GetBytes(sheet.Html)).AsSpan(0, MarkLength);
        Settle(document, Encoding.Latin1.GetString(mark));
        using var written = new MemoryStream();
        document.Save(written, closeStream: false);
        return new PrintedSheet(SameMarks(written.ToArray(), new Guid(mark)), pages);
    }

    private static void Settle(PdfDocument document, string mark)
    {
        document.Info.Creator = "Witnessmark";
        document.Info.CreationDate = NoDate;
        document.Info.ModificationDate = NoDate;
        document.Internals.FirstDocumentID = mark;
        document.Internals.SecondDocumentID = mark;
    }

    /// <summary>The library draws the two marks of its metadata by lot; these are of the same length.</summary>
    private static byte[] SameMarks(byte[] pdf, Guid mark) =>
        Encoding.Latin1.GetBytes(DrawnMark().Replace(Encoding.Latin1.GetString(pdf), $"uuid:{mark:D}"));

    [GeneratedRegex("(?<=ID>)uuid:[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}")]
    private static partial Regex DrawnMark();
}
