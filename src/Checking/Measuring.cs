using Witnessmark.Language.Model;

namespace Witnessmark.Checking;

/// <summary>Readings and values of a procedure, or of a data sheet when there is no procedure.</summary>
/// <param name="Machine">Whose names they can use; null for a common part.</param>
public sealed record Measuring(Machine? Machine, Procedure? Procedure)
{
    public Items<ReadingItem> Readings => Procedure?.Readings ?? Machine!.Readings;

    public Items<TestItem> Tests => Procedure?.Tests ?? Machine!.Tests;

    public Items<WorkedValue> Values => Procedure?.Values ?? Machine!.Values;
}
