using System.Text.RegularExpressions;
using Witnessmark.Rendering.Checklist;

namespace Witnessmark.Press.Tests;

/// <summary>Makes a print wrong on purpose.</summary>
internal static partial class Styles
{
    // the page lets only its own style in; a wrong one takes the bar away with it
    public static PressSheet With(this PressSheet sheet, string style) =>
        sheet with { Html = Policy().Replace(sheet.Html, "").Replace("</style>", style + "</style>", StringComparison.Ordinal) };

    [GeneratedRegex("<meta http-equiv=\"Content-Security-Policy\"[^>]*>")]
    private static partial Regex Policy();
}
