using System.Globalization;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Rendering.Figures;

/// <summary>Names of drawings, no two alike on a page: kind, step, and which of the step's.</summary>
internal static class FigureId
{
    public static string Of(string kind, SheetStep step, int which) =>
        string.Create(CultureInfo.InvariantCulture, $"{kind}-{step.Code.Plain.Replace('.', '-')}{(which == 0 ? "" : $"-{which + 1}")}");

    /// <summary>For a drawing of no step: of an item of a data sheet, of a part as a whole.</summary>
    public static string Of(string kind, int which) => string.Create(CultureInfo.InvariantCulture, $"{kind}-no-{which + 1}");

    /// <summary>For a drawing of what a step asks for.</summary>
    public static string Of(string kind, SheetStep step, Ask ask) => Of(kind, step, step.Asks.Where(a => a.GetType() == ask.GetType()).ToList().IndexOf(ask));
}
