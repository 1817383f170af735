using Witnessmark.Engineering.Printing;

namespace Witnessmark.Rendering.Checklist;

/// <summary>What a print is called at its head and foot, and where its clamp holds it.</summary>
internal sealed record PrintKind(string Says, Measure Clamp)
{
    public static PrintKind Sheet(Words words) => new(words.Sheet, SheetMeasures.Clamp);

    public static PrintKind Card(Words words) => new(words.FenderCard, SheetMeasures.CardClamp);

    /// <summary>Millimetres that its foot is narrower than a sheet's.</summary>
    public double Narrower => Clamp.Millimetres - SheetMeasures.Clamp.Millimetres;
}
