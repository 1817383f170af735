using System.Security.Cryptography;
using System.Text;
using Scriban.Runtime;

namespace Witnessmark.Rendering.Html;

/// <summary>The first lines of everything that is printed: one file that needs nothing else, without script.</summary>
internal static class PrintHead
{
    public const string Template = "templates/print-head.html";

    public static ScriptObject Of(string language, string title, string style) => new()
    {
        ["language"] = language,
        ["title"] = title,
        ["policy"] = Policy(style),
        ["style"] = new RawHtml(style),
    };

    // only this very style runs, and only the pictures inside it load
    private static string Policy(string style) =>
        $"default-src 'none'; style-src 'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(style)))}'; img-src data:; base-uri 'none'; form-action 'none'";
}
