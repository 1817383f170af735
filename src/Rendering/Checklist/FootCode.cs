using System.Globalization;
using Witnessmark.Rendering.Figures;

namespace Witnessmark.Rendering.Checklist;

/// <summary>The square code at the foot of a page. Millimetres, from the lower right corner of the paper.</summary>
/// <param name="Says">What it says on every page: id, version, hash and set mark.</param>
/// <param name="Letter">Before the page: C on a card, T on tags, nothing on a sheet.</param>
/// <param name="Size">Edge, the quiet zone of four modules included: no module is below 0.5 mm on a sheet of up to 99 pages.</param>
public sealed record FootCode(string Says, string Letter, double Right, double Bottom, double Size)
{
    /// <summary><c>WB-40 2.1.0 3F9AC21B77DE K7M 3/8</c>: a page that strays says where it belongs.</summary>
    public string SaysOn(int page, int pages) => Text(Says, Letter, page, pages);

    /// <summary>Rows of modules, true is black, with the quiet zone.</summary>
    public bool[][] ModulesOn(int page, int pages) => Qr.Modules(SaysOn(page, pages));

    internal static string Text(string says, string letter, int page, int pages) => string.Create(CultureInfo.InvariantCulture, $"{says} {letter}{page}/{pages}");

    internal static string Longest(string says, string letter) => Text(says, letter, 99, 99);
}
