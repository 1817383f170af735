namespace Witnessmark.Engineering.Printing;

/// <summary>
/// Room for a safety message where its steps go on to another page. Browsers repeat it there as long as it takes no more than a quarter
/// of the page, or of what the messages above it leave. Millimetres, on the narrower and the shorter paper.
/// </summary>
public static class MessageRoom
{
    private const double Share = 0.25;

    // ADVERTENCIA with its triangle and hatch, and the distances inside the box
    private const double LongestSignal = 63;
    private const double PadsBeside = 4;
    private const double PadsAbove = 2;

    // a help line and a standing notice of two lines
    private const double LongestFoot = 40;

    private static readonly double Column = SheetMeasures.NarrowPaper.Millimetres - SheetMeasures.Clamp.Millimetres - SheetMeasures.Right.Millimetres
        - (2 * SheetMeasures.Warning.Millimetres) - LongestSignal - SheetMeasures.Divider.Millimetres - PadsBeside;

    private static readonly double Frame = PadsAbove + (2 * SheetMeasures.Warning.Millimetres) + (2 * SheetMeasures.MessageGap.Millimetres);

    /// <summary>Of a page, without clip and foot.</summary>
    public static double Page { get; } = SheetMeasures.ShortPaper.Millimetres - SheetMeasures.Clip.Millimetres - LongestFoot;

    /// <summary>Lines of a message: nature and consequence, then each way to avoid it. Measured in bold, so never too few.</summary>
    public static int Lines(IEnumerable<string> paragraphs) => paragraphs.Sum(p => SansBold.Lines(p, SheetMeasures.Said, Column));

    /// <param name="left">What messages above leave of the page.</param>
    public static int MostLines(double left) => Math.Max(0, (int)(((left * Share) - Frame) / SheetMeasures.SaidLine.Millimetres));

    public static double Height(int lines) => (lines * SheetMeasures.SaidLine.Millimetres) + Frame;
}
