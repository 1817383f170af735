using System.Security.Cryptography;
using System.Text;
using Witnessmark.Engineering.Printing;
using Witnessmark.Records.Hashing;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Checklist;

/// <summary>Which print this is: everything on it that is not in the procedure.</summary>
/// <param name="Hash">64 hexadecimal digits; the first 12 are printed.</param>
/// <param name="SetMark">Three characters of the copy, from the register; null: a specimen that was not issued.</param>
/// <param name="Unit">Null: a box to write it in. The same for serial and place.</param>
/// <param name="PrintedAt">Time of printing as it is to stand there; empty on a specimen.</param>
/// <param name="TemplateHash">64 hexadecimal digits: which templates and figures made the print.</param>
public sealed record SheetIdentity(
    string Procedure,
    string Version,
    string Hash,
    string? SetMark,
    string? Unit,
    string? Serial,
    string? Place,
    string PrintedAt,
    string TemplateHash)
{
    /// <summary>64 hexadecimal digits: which words of a translation are printed; null on a sheet in the procedure's own language.</summary>
    public string? WordsHash { get; init; }

    /// <summary>The hash of this program's own sheet templates, styles and measures.</summary>
    public static string OwnTemplateHash => Convert.ToHexStringLower(SHA256.HashData(
        Encoding.UTF8.GetBytes(Resources.Hash(PrintHead.Template, "templates/sheet", "site/sheet.css", "site/signals.css", Resources.Figures) + SheetMeasures.Root)));

    /// <summary>What the square code says: id, version, hash and set mark, in capitals.</summary>
    public string CodeText =>
        string.Join(' ', new[] { Procedure, Version, ShortHash.Plain(Hash), SetMark }.Where(p => p is not null)).ToUpperInvariant();
}
