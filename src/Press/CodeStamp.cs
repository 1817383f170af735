using System.Globalization;
using System.Text;
using PdfSharp.Pdf;
using Witnessmark.Rendering.Checklist;

namespace Witnessmark.Press;

/// <summary>
/// The square code of one page, drawn where the sheet leaves room for it. Style sheets count pages but cannot count into a
/// picture, so this is done on the PDF. An artifact: a screen reader reads the same words in the text beside it.
/// </summary>
internal static class CodeStamp
{
    private const double PointsPerMillimetre = 72 / 25.4;

    public static void Put(PdfPage page, FootCode code, int number, int pages)
    {
        // the browser leaves its own scale behind; what is drawn between q and Q knows nothing of it
        page.Contents.PrependContent().CreateStream("q\n"u8.ToArray());
        page.Contents.AppendContent().CreateStream(Encoding.ASCII.GetBytes($"Q\n{Drawing(page, code, number, pages)}"));
    }

    private static string Drawing(PdfPage page, FootCode code, int number, int pages)
    {
        var modules = code.ModulesOn(number, pages);
        var scale = code.Size / modules.Length * PointsPerMillimetre;
        var left = page.MediaBox.X2 - ((code.Right + code.Size) * PointsPerMillimetre);
        var top = (code.Bottom + code.Size) * PointsPerMillimetre;
        var drawing = new StringBuilder("/Artifact <</Type /Pagination /Subtype /Footer>> BDC\nq\n");
        // one unit a module, counted from the upper left corner
        drawing.Append(CultureInfo.InvariantCulture, $"{N(scale)} 0 0 {N(-scale)} {N(left)} {N(top)} cm\n0 g\n");
        for (var y = 0; y < modules.Length; y++)
            Row(drawing, modules[y], y);
        return drawing.Append("f\nQ\nEMC\n").ToString();
    }

    // a run of black modules in one, a hair taller so that no light line shows between rows
    private static void Row(StringBuilder drawing, bool[] row, int y)
    {
        for (var x = 0; x < row.Length; x++)
        {
            if (!row[x])
                continue;
            var start = x;
            while (x + 1 < row.Length && row[x + 1])
                x++;
            drawing.Append(CultureInfo.InvariantCulture, $"{start} {y} {x - start + 1} 1.02 re\n");
        }
    }

    private static string N(double points) => points.ToString("0.####", CultureInfo.InvariantCulture);
}
