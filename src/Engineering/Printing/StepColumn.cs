namespace Witnessmark.Engineering.Printing;

/// <summary>Room for the words of a step between its code and its boxes, on the narrower paper. Millimetres.</summary>
public static class StepColumn
{
    // DONE or HECHO between the rules of its cell
    private const double DoneCell = 20;

    /// <summary>No box stands beside the words, or only the cell that says they are done.</summary>
    public static double Free { get; } = SheetMeasures.NarrowPaper.Millimetres - SheetMeasures.Clamp.Millimetres - SheetMeasures.Right.Millimetres
        - SheetMeasures.CodeWidth.Millimetres - SheetMeasures.RowGap.Millimetres - DoneCell;

    /// <summary>Boxes stand beside the words: what the sheet leaves to the words before it moves the boxes to a line of their own.</summary>
    public static double BesideBoxes { get; } = SheetMeasures.WordsWidth.Millimetres;
}
