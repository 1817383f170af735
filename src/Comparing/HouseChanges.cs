using Witnessmark.Language.Model;

namespace Witnessmark.Comparing;

/// <summary>The workshop file in two states: a limit of the house that lets more through concerns every procedure.</summary>
internal static class HouseChanges
{
    public static IEnumerable<Change> Between(Workshop old, Workshop made) =>
        DataChanges.Between("workshop", old.Node, made.Node).Select(c => c.What.StartsWith("people", StringComparison.Ordinal) ? c with { Class = ChangeClass.Method } : c);
}
