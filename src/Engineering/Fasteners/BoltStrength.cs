using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Engineering.Fasteners;

/// <summary>What the head of a bolt says about its strength: a class where the thread is metric, a grade where it is in inches.</summary>
/// <param name="Length">Under the head; a grade 2 bolt longer than 6 in bears less.</param>
public sealed record BoltStrength(BoltThread Thread, string Mark, Quantity? Length = null)
{
    /// <summary>Null when thread or mark is not stated, or when the mark belongs to the other kind of thread.</summary>
    public static BoltStrength? Of(FastenerGroup group) => group switch
    {
        { Thread.Value: MetricThread thread, PropertyClass.Value: { } mark } => new(thread, mark, group.Length?.Value),
        { Thread.Value: InchThread thread, Grade.Value: { } mark } => new(thread, mark, group.Length?.Value),
        _ => null,
    };

    /// <summary>The row of the standard; null when class or grade is not in it.</summary>
    public StrengthClass? Class => Thread is InchThread ? InchGrades.Find(Mark) : PropertyClasses.Find(Mark);

    /// <summary>Sp, in MPa or psi; null when the standard has no such size.</summary>
    public Quantity? ProofStress => Thread is InchThread ? InchGrades.ProofStress(Mark, Thread.Diameter, Length) : PropertyClasses.ProofStress(Mark, Thread.Diameter);
}
