using Witnessmark.Engineering.Printing;

namespace Witnessmark.Rendering.Checklist;

/// <summary>What a print is called at its head and foot, where its clamp holds it, and the letter of its square code.</summary>
internal sealed record PrintKind(string Says, Measure Clamp, string Letter)
{
    public static PrintKind Sheet(Words words) => new(words.Sheet, SheetMeasures.Clamp, "");

    public static PrintKind Card(Words words) => new(words.FenderCard, SheetMeasures.CardClamp, "C");

    /// <summary>Millimetres that its foot is narrower than a sheet's.</summary>
    public double Narrower => Clamp.Millimetres - SheetMeasures.Clamp.Millimetres;
}
