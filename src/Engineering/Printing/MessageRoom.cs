namespace Witnessmark.Engineering.Printing;

/// <summary>
/// Room for safety messages where their steps go on to another page. Browsers repeat a message there as long as it takes no more than a
/// quarter of the page, or of what the messages above it leave. Millimetres, on one paper.
/// </summary>
public sealed class MessageRoom
{
    private const double Share = 0.25;

    // ADVERTENCIA with its triangle and hatch, and the distances inside the box
    private const double LongestSignal = 63;
    private const double PadsBeside = 4;
    private const double PadsAbove = 2;

    // a help line and a standing notice of two lines
    private const double LongestFoot = 40;

    private static readonly double Frame = PadsAbove + (2 * SheetMeasures.Warning.Millimetres) + (2 * SheetMeasures.MessageGap.Millimetres);

    private readonly double _column;

    private MessageRoom(double width, double height)
    {
        _column = width - SheetMeasures.Clamp.Millimetres - SheetMeasures.Right.Millimetres
            - (2 * SheetMeasures.Warning.Millimetres) - LongestSignal - SheetMeasures.Divider.Millimetres - PadsBeside;
        Page = height - SheetMeasures.Clip.Millimetres - LongestFoot;
    }

    /// <summary>ISO 216, from memory.</summary>
    public static MessageRoom A4 { get; } = new(SheetMeasures.NarrowPaper.Millimetres, 297);

    /// <summary>8.5 by 11 in.</summary>
    public static MessageRoom Letter { get; } = new(215.9, SheetMeasures.ShortPaper.Millimetres);

    /// <summary>Of a page, without clip and foot.</summary>
    public double Page { get; }

    /// <summary>Lines of a message: nature and consequence, then each way to avoid it. Measured in bold, so never too few.</summary>
    public int Lines(IEnumerable<string> paragraphs) => paragraphs.Sum(p => SansBold.Lines(p, SheetMeasures.Said, _column));

    /// <param name="left">What messages above leave of the page.</param>
    public static int MostLines(double left) => Math.Max(0, (int)(((left * Share) - Frame) / SheetMeasures.SaidLine.Millimetres));

    public static double Height(int lines) => (lines * SheetMeasures.SaidLine.Millimetres) + Frame;
}
